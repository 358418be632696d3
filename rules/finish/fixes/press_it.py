"""Press it."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.finish import press_place


def work(trouble: Trouble, view: View) -> Work:
    return work_of((press_place(view, trouble.place),))


fix = Fix(
    title="Press it",
    why="Pressing sets the stitches into the cloth and lets the seam lie flat.",
    wrong_when="There is rust or another stain in reach: heat sets it.",
    source="GINETEX",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
