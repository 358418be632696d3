"""Narrow the legs at both seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("inseams", "outseams"), total, -1), total=total)


fix = Fix(
    title="Take in both seams of each leg",
    why="Half goes at the inner and half at the outer seam, so that crease and grain stay in the middle of the leg "
    "and both seams hang straight.",
    wrong_when="One of the seams is felled, or a selvage or stripe should stay.",
    source="EHOWTAPER",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("See that a pointed foot still passes the opening.",),
    work=work,
)
