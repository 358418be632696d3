"""A pleat down the center back, stitched to the waist."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.backs import pleat_back


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(pleat_back(view, trouble.place, total), total=total)


fix = Fix(
    title="Stitch a pleat down the center back",
    why=(
        "One pleat takes the whole amount at the center back and is sewn down to the waist. Nothing is cut: "
        "unpicked, the back is as wide as it was."
    ),
    wrong_when=(
        "The cloth is checked or striped and the pleat would bite into the pattern, or the shirt is worn "
        "under a close jacket."
    ),
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    work=work,
)
