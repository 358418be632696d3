"""Use it as the pattern for a new one."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import copy_off


def work(trouble: Trouble, view: View) -> Work:
    return work_of((copy_off(view),))


fix = Fix(
    title="Take the pattern off it and make a new one",
    why="The cut is what is worth keeping when the cloth is gone: it can be read off without pulling a seam.",
    wrong_when="The piece itself is what matters, as a keepsake: then it is kept in a box and not worn.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=1,
    sews=False,
    work=work,
)
