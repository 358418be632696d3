"""Leveled and hemmed as before."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.tails import level


def work(trouble: Trouble, view: View) -> Work:
    return work_of(level(view, trouble.place, amount(trouble, "uneven")))


fix = Fix(
    title="Level it and hem it again",
    why="What hangs too low is cut away to the highest point, and the hem goes up as it was.",
    wrong_when=(
        "One shoulder is higher than the other and the wearer wants it so: then it hangs level only on this body."
    ),
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("What is cut off cannot be let down again.",),
    work=work,
)
