"""A tuck above an edge that is kept."""

from advisor.figures.formula import figure
from advisor.figures.hems import keep_edge_fold
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hems import pin_tuck, sew_tuck


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    depth = figure(keep_edge_fold, "depth", too_long=amount(trouble, "long"))
    return work_of((pin_tuck(view, place, depth), sew_tuck(view, place, depth)))


fix = Fix(
    title="Take a tuck above the original edge",
    why=(
        "A fold close above the old hem shortens the end and leaves its worn, faded or ornamented edge as it was. "
        "The seam sinks in behind the hem; the fold takes twice its depth."
    ),
    wrong_when=(
        "The cloth is so thick that the fold stands out, or the end is so slanted that the edge no longer fits "
        "above itself."
    ),
    source="METTLER",
    difficulty=2,
    durability=3,
    visibility=3,
    cautions=("Sew a sample on the true number of layers: at the seams it is eight and more.",),
    work=work,
)
