"""Unpick the mend and do it again to size."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import do_over


def work(trouble: Trouble, view: View) -> Work:
    return work_of((do_over(view, trouble.place),))


fix = Fix(
    title="Unpick the mend and do it again to size",
    why="A mend of the wrong size does not hold, or shows; nothing is lost but the time.",
    wrong_when="The cloth is so weak that it does not stand being unpicked.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=(),
    work=work,
)
