"""Narrow the legs at the outer seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("outseams",), total, -1), total=total)


fix = Fix(
    title="Take in the outer leg seams",
    why="Both outer seams are sewn further in below the pockets and run out above.",
    wrong_when="A selvage or a stripe marks the outer seam, or much comes off below the knee: taken from one seam "
    "only, the crease wanders.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=(
        "See that a pointed foot still passes the opening.",
        "Past about 1 in of the round from one seam the grain swings and the leg twists: then share it over both.",
    ),
    work=work,
)
