"""Set a stripe of another cloth down both sides."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import strips_along_sides


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(
        strips_along_sides(
            view, trouble.place, view.one("lower_part"), total, "washed cloth of like weight, meant to be seen"
        ),
        total=total,
    )


fix = Fix(
    title="Set a stripe of another cloth down both sides",
    why="Where nothing matches, a stripe from waist to hem in a cloth that is plainly another looks meant, and gives "
    "half of the amount at each side.",
    wrong_when="It must look as it came, or the sides carry pockets.",
    source="GREENIE",
    difficulty=4,
    durability=5,
    visibility=5,
    cautions=("Wash the cloth of the strips first, as the garment was washed: new cloth shrinks on old.",),
    work=work,
)
