"""Unpick a mend of the wrong size and sew it again."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending_parts import resize


def work(trouble: Trouble, view: View) -> Work:
    return work_of((resize(view, trouble.problem, trouble.place),))


fix = Fix(
    title="Unpick it and sew it again to the right size",
    why="A mend of the wrong size does not hold, or shows; nothing is lost but the time.",
    wrong_when="The cloth is so weak that it does not stand being unpicked.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=3,
    work=work,
)
