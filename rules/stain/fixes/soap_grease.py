"""Rubbed out with soap from the wrong side and washed."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stains import soak, wash_out


def work(trouble: Trouble, view: View) -> Work:
    return work_of((soak(view, trouble.place, "grease"), wash_out(view, trouble.place)))


fix = Fix(
    title="Soap it out and wash it",
    why="Soap takes grease up and lets water carry it away, from the wrong side out onto white cloth.",
    wrong_when="The label says dry cleaning only: then blot it and take it to the cleaner soon.",
    source="ILL-STAIN",
    difficulty=1,
    durability=5,
    visibility=1,
    sews=False,
    work=work,
)
