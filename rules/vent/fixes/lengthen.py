"""A vent opened further up."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.skirts import lengthen_vent


def work(trouble: Trouble, view: View) -> Work:
    return work_of(lengthen_vent(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Open the vent further up",
    why="The seam above the vent is unpicked as far as the step asks and the end made fast again, over a scrap of "
    "tape.",
    wrong_when="It would open above a hand's breadth below the seat: then slits at the sides or a wider hem are the "
    "better help.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Stride, sit down and bend with it pinned before you unpick.",),
    work=work,
)
