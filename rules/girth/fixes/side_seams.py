"""Take the waist in at both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import baste_sides, finish_sides, open_sides, take_in_sides, with_waist_open
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    takes = parts(total, 2, view.tape, "side")
    ops = (
        open_sides(view, lower),
        baste_sides(view, lower, total, takes),
        *take_in_sides(view, lower, takes),
        finish_sides(view, lower),
    )
    return work_of(with_waist_open(view, ops), total=total)


fix = Fix(
    title="Take in both side seams",
    why="Each side seam takes half, a quarter from each layer. The gap between the back pockets stays; each pocket "
    "comes nearer its side seam and the curve of the hip.",
    wrong_when="The sides carry front pockets, rivets or a felled seam, or only the back of the waist stands off: the "
    "side seams then swing backward.",
    source="IKAT",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Take left and right in alike unless the body differs, and front and back alike, or the seams swing.",),
    work=work,
)
