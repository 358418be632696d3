"""Take the hip in at both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import along_sides


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along_sides(view, trouble.place, view.one("lower_part"), total, -1), total=total)


fix = Fix(
    title="Take in both side seams over the hip",
    why="Each side seam takes half, a quarter from each layer. The waist gives up along the same line what it has to "
    "spare, at most 1 in more than the hip; what is left there is for darts.",
    wrong_when="Pockets, rivets or felled seams sit in the sides, or only the seat hangs: then the center back is "
    "the place.",
    source="IKAT",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(
        "Take left and right alike unless the body differs, and front and back alike, or the seams swing.",
        "Trim nothing until it has been sat in for a day and washed.",
    ),
    work=work,
)
