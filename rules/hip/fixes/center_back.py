"""Take the seat in at the center-back seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import along_center_back


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along_center_back(view, trouble.place, view.one("lower_part"), total, -1), total=total)


fix = Fix(
    title="Take in the center-back seam over the seat",
    why="The seat seam takes all of it, half from each side, from the waist to the start of the crotch curve. Back "
    "pockets come together by the whole amount. Sources differ on the most: 1 5/8 in (a suit shop), 3 in (a tailoring "
    "page).",
    wrong_when="The sides stand off and the seat lies well: the side seams would be dragged backward.",
    source="SCL",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(
        "A seat taken in is tried seated, or it bursts there.",
        "Trim nothing until it has been sat in for a day and washed.",
    ),
    work=work,
)
