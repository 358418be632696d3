"""A loop with a button between button and hole."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.collars import extend_neck


def work(trouble: Trouble, view: View) -> Work:
    return work_of(extend_neck(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Hang a loop with a button on the collar button",
    why=(
        "A short elastic loop with its own button lengthens the neck in a minute and comes off again; behind "
        "a tie nobody sees it."
    ),
    wrong_when=(
        "The collar is worn without a tie or scarf, or more than 3/4 in is wanting: the points then stand apart."
    ),
    source="EHOW-EXT",
    difficulty=1,
    durability=2,
    visibility=2,
    work=work,
)
