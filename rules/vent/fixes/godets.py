"""Let a wedge into each side seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.skirts import godets


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(godets(view, trouble.place, total, "matching cloth, washed"), total=total)


fix = Fix(
    title="Let a wedge into each side seam",
    why="Both side seams are opened from the edge up and a wedge is set in, half of the amount wide at the edge: it "
    "swings out in the step and falls shut at rest.",
    wrong_when="A border or a check runs round the edge.",
    source="BUMBLE",
    difficulty=3,
    durability=5,
    visibility=3,
    cautions=("Wash the cloth of the wedges first, as the garment was washed.",),
    work=work,
)
