"""Slits at both sides."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.skirts import slits


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(slits(view, trouble.place, total), total=total)


fix = Fix(
    title="Open a slit at each side",
    why="Both side seams are opened from the edge up until each stands open half of the amount, the allowances "
    "turned back and the tops barred.",
    wrong_when="The leg should not be seen, or a lining or border runs across the seams.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Where it is lined, slit the lining as far, or it hobbles the step as before.",),
    work=work,
)
