"""The button of the neck moved."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.collars import move_button


def work(trouble: Trouble, view: View) -> Work:
    return work_of(move_button(view, trouble.place, amount(trouble, "by"), trouble.problem == "collar_tight"))


fix = Fix(
    title="Move the collar button",
    why="The button moves along the band, and the neck grows or shrinks by as much. Nothing else changes.",
    wrong_when=(
        "More than 1/2 in: the button would sit at the very end of the band, or the points would lie crooked "
        "over each other."
    ),
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
