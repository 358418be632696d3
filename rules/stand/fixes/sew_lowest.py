"""An odd button at the lowest place."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import sew_lowest


def work(trouble: Trouble, view: View) -> Work:
    return work_of((sew_lowest(trouble.place, "finish"),))


fix = Fix(
    title="Sew an odd button at the lowest place",
    why="Whatever is of the same width does where nobody looks.",
    wrong_when="The shirt is worn outside the belt.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
