"""Let the seat out at the center-back seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import along_center_back


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along_center_back(view, trouble.place, view.one("lower_part"), total, 1), total=total)


fix = Fix(
    title="Let out the center-back seam over the seat",
    why="The seat seam is sewn again nearer its raw edges, from the waist to the start of the crotch curve. It gives "
    "twice its allowance less the 3/8 in that must stay on each side; another guide keeps 1/2 in.",
    wrong_when="The strain is at the sides or across the front: cloth given at the back does not travel there.",
    source="SCL",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=(
        "Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",
        "Sew the seat twice, with short stitches.",
    ),
    work=work,
)
