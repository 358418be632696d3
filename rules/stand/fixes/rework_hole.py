"""A frayed buttonhole worked over."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import rework_hole


def work(trouble: Trouble, view: View) -> Work:
    return work_of((rework_hole(trouble.place),))


fix = Fix(
    title="Work the buttonhole over again",
    why="New stitches over the old ones hold the edge as the first did.",
    wrong_when="The cloth at its end is torn: stitches alone do not hold there.",
    source="COLO8528",
    difficulty=2,
    durability=4,
    visibility=1,
    work=work,
)
