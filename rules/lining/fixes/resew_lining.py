"""Sew the lining seam again."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Tuck both raw edges in along the old fold, pin, and sew 1/16 in from the folds, beginning and ending 1 "
        "in past "
        "the opening. See that nothing of the garment is caught."
    )
    key = f"{trouble.place}.state"
    return work_of(
        (mend(view, key, "sewn again", "sew", "straight", (6, 10, 18), says, "mend", Need("thread to match")),)
    )


fix = Fix(
    title="Sew the lining seam again",
    why="The edges are tucked in along the old folds and sewn together close to the edge from the right side.",
    wrong_when="It gave because it was too tight: then let it out, or lay a pleat of new cloth in.",
    source="LININGSEAM",
    difficulty=1,
    durability=4,
    visibility=1,
    cautions=(),
    work=work,
)
