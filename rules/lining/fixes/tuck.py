"""A tuck in the lining."""

from advisor.figures.formula import figure
from advisor.figures.hems import keep_edge_fold
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.skirts import pin_lining, sew_lining_tuck


def work(trouble: Trouble, view: View) -> Work:
    lining = trouble.place
    depth = figure(keep_edge_fold, "depth", too_long=amount(trouble, "long"))
    return work_of((pin_lining(view, lining, depth), sew_lining_tuck(view, lining, depth)))


fix = Fix(
    title="Take a tuck in the lining",
    why="A fold all round, above the hem of the lining, takes it up; its edge and its seams stay as they are, and "
    "the skirt may be let down one day.",
    wrong_when="The lining is tight round the hip: a tuck takes none of its width but stiffens it.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    cautions=(),
    work=work,
)
