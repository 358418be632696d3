"""Let the hip out at both side seams."""

from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import holds
from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.hips import along_sides

KEEP = inches("3/8")
"""What stays at a seam under strain: common practice, no source."""


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    keep = plain("keep", KEEP, "common-practice")
    held = figure(holds, "held", allowance=view.measure(f"{trouble.place}.allowance"), keep=keep, seams=2)
    return work_of(along_sides(view, trouble.place, view.one("lower_part"), total, 1), total=total, held=held)


fix = Fix(
    title="Let out both side seams over the hip",
    why="Each side seam is sewn again nearer its raw edges, front and back alike. It gives twice what its allowance "
    "has beyond the 3/8 in that must stay where it is sat on.",
    wrong_when="The old line or a pale crease still shows after steaming, or the allowance was clipped. Women's "
    "ready-made trousers seldom hold anything to let out.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",),
    work=work,
)
