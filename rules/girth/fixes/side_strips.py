"""Let strips of cloth into both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import (
    baste_strips,
    cut_strips,
    finish_sides,
    open_sides,
    set_strips,
    with_waist_open,
)
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    gains = parts(total, 2, view.tape, "side")
    ops = (
        open_sides(view, lower),
        cut_strips(view, lower, total),
        baste_strips(view, lower),
        *set_strips(view, lower, gains),
        finish_sides(view, lower),
    )
    return work_of(with_waist_open(view, ops), total=total)


fix = Fix(
    title="Let strips into the side seams",
    why="A strip in each side seam gives half of the amount at the waist and runs out at the hip. Nothing of the "
    "garment is cut, and the width can be chosen.",
    wrong_when="A stripe down the sides would look borrowed, or the sides carry pockets.",
    source="NARELLE",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash the cloth of the strips first, as the garment was washed: new cloth shrinks on old.",),
    work=work,
)
