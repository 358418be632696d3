"""Let the legs out at the outer seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("outseams",), total, 1), total=total)


fix = Fix(
    title="Let out the outer leg seams",
    why="Both outer seams are sewn again nearer their raw edges: each gives twice what its allowance has beyond the "
    "3/8 in that must stay.",
    wrong_when="The old line shows after steaming, or a pocket bag is caught in the seam.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",),
    work=work,
)
