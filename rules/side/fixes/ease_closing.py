"""The closing set again wider."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import ease_closing


def work(trouble: Trouble, view: View) -> Work:
    return work_of((ease_closing(view, trouble.place, amount(trouble, "over")),))


fix = Fix(
    title="Set the closing again, wider",
    why="The closing is unpicked and set so that the edges meet and no more.",
    wrong_when="The edges are meant to overlap.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
