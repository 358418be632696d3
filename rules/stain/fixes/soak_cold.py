"""Soaked in cold water and washed."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stains import soak, wash_out


def work(trouble: Trouble, view: View) -> Work:
    return work_of((soak(view, trouble.place, "body"), wash_out(view, trouble.place)))


fix = Fix(
    title="Soak it cold and wash it",
    why="What a body makes is protein: cold water and washing liquid loosen it, and the wash takes it out.",
    wrong_when="It has been washed hot or ironed already: then it is an old stain.",
    source="ILL-STAIN",
    difficulty=1,
    durability=5,
    visibility=1,
    cautions=("Cold water only, until it is gone.",),
    sews=False,
    work=work,
)
