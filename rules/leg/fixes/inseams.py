"""Narrow the legs at the inner seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("inseams",), total, -1), total=total)


fix = Fix(
    title="Take in the inner leg seams",
    why="Both inner seams are sewn further in and run out above. A denim maker narrows legs there; another page "
    "wants what comes off below the knee shared with the outer seam, so that the grain stays in the middle.",
    wrong_when="Much comes off below the knee, over about 2 in: taken from one seam only, the crease wanders.",
    source="FITTED",
    difficulty=2,
    durability=4,
    visibility=1,
    cautions=(
        "See that a pointed foot still passes the opening.",
        "Past about 1 in of the round from one seam the grain swings and the leg twists: then share it over both.",
    ),
    work=work,
)
