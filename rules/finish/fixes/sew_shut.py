"""Sew the open seam."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.finish import close_seams


def work(trouble: Trouble, view: View) -> Work:
    return work_of(close_seams(view, trouble.place))


fix = Fix(
    title="Sew the open seam",
    why="The seam goes back on its own line, and the garment is whole again.",
    wrong_when="Something else still has to go into the seam.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    work=work,
)
