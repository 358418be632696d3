"""Set stripes of another cloth into the outer leg seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import strips_down_legs


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(
        strips_down_legs(view, trouble.place, total, "washed cloth of like weight, meant to be seen"), total=total
    )


fix = Fix(
    title="Set stripes of another cloth into the outer leg seams",
    why="A strip in each outer seam gives all of the amount where it binds. As a stripe from band to hem it looks "
    "meant; nothing of the garment is cut.",
    wrong_when="It must look as it came.",
    source="GREENIE",
    difficulty=4,
    durability=5,
    visibility=5,
    cautions=("Wash the cloth of the strips first, as the garment was washed.",),
    work=work,
)
