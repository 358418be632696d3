"""Sew the burst seam again, twice."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import resew


def work(trouble: Trouble, view: View) -> Work:
    return work_of((resew(view, trouble.place),))


fix = Fix(
    title="Sew the burst seam again, twice",
    why="The old line is sewn again with strong thread and short stitches, 1 in into the sound seam at both ends, "
    "and once more on top.",
    wrong_when="The garment is too small there: let it out first, or the cloth tears beside the new thread.",
    source="FABDAM",
    difficulty=1,
    durability=4,
    visibility=1,
    cautions=("Press the seam before another crosses it.",),
    work=work,
)
