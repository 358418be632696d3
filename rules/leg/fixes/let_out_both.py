"""Let the legs out at both seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.legs import along


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(along(view, trouble.place, ("inseams", "outseams"), total, 1), total=total)


fix = Fix(
    title="Let out both seams of each leg",
    why="Inner and outer seams are sewn again nearer their raw edges and give half each.",
    wrong_when="Either allowance is trimmed, or the old lines show after steaming.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",),
    work=work,
)
