"""Take the marks out."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.finish import rub_out


def work(trouble: Trouble, view: View) -> Work:
    return work_of((rub_out(view, trouble.place),))


fix = Fix(
    title="Take the marks out",
    why="What was marked and not used is taken out while it still comes out.",
    wrong_when="It is still to be cut.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=1,
    work=work,
)
