"""Take the seat in at a felled center-back seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import along_center_back


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along_center_back(view, trouble.place, view.one("lower_part"), total, -1), total=total)


fix = Fix(
    title="Take in the felled center-back seam over the seat",
    why="The felled seam is opened from the band through the yoke to the crotch, taken in by half on each side, and "
    "felled and topstitched again. Back pockets and the points of the yoke come together by the whole amount.",
    wrong_when="The machine does not sew the layers where yoke, center and inner seams cross: try a sample of the "
    "true thickness first.",
    source="NINEL",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "Wash and dry it before you measure: denim still draws up.",
        "The old rows of stitching leave paler lines in worn denim.",
    ),
    work=work,
)
