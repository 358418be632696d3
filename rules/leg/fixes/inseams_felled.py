"""Narrow the legs at felled inner seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("inseams",), total, -1), total=total)


fix = Fix(
    title="Take in the felled inner leg seams",
    why="Both felled seams are opened along the leg, taken in, felled and topstitched again from end to end, so that "
    "no line of stitching is pieced.",
    wrong_when="The machine does not sew the layers where the felled seams cross at the crotch: try a sample of the "
    "true thickness first.",
    source="DENIMTAPER",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "See that a pointed foot still passes the opening.",
        "A home machine sews felled denim slowly: a stout needle, and turn the wheel by hand at the crossing.",
    ),
    work=work,
)
