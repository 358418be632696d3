"""Take the measures again."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import measure_again


def work(trouble: Trouble, view: View) -> Work:
    return work_of((measure_again(view),))


fix = Fix(
    title="Measure it again",
    why="After a wash every number is taken anew, on the body and flat.",
    wrong_when="Nothing has been washed since.",
    source="IKAT",
    difficulty=1,
    durability=5,
    visibility=1,
    sews=False,
    work=work,
)
