"""Sew belt loops and label on again."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.band_loops import set_again


def work(trouble: Trouble, view: View) -> Work:
    return work_of((set_again(view, trouble.place),))


fix = Fix(
    title="Sew loops and label on again",
    why="The loop at center back goes over the seam in the band and hides it; the label goes back through its old "
    "holes. Both are sewn as they were.",
    wrong_when="No belt will be worn, and the marks of the old stitches have steamed out.",
    source="EHOWJ",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Six layers of denim break a needle: turn the wheel by hand, eyes away.",),
    work=work,
)
