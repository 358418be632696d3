"""Finish the hem."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.finish import close_hem


def work(trouble: Trouble, view: View) -> Work:
    return work_of((close_hem(view, trouble.place),))


fix = Fix(
    title="Finish the hem",
    why="The raw edge is shut in or overcast, and the hem hangs as it did.",
    wrong_when="Its length is not settled yet.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    work=work,
)
