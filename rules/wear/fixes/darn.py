"""Darn it, on thin cloth laid behind."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import darn_place


def work(trouble: Trouble, view: View) -> Work:
    return work_of((darn_place(view, trouble.place),))


fix = Fix(
    title="Darn it, on thin cloth laid behind",
    why="Rows of thread go back and forth over hole and thin cloth, begun and ended 1/2 in in sound cloth. In a "
    "matching thread it is the least seen of all mends.",
    wrong_when="Much pulls at the place: a darn carries itself and little more.",
    source="SCHOOLSEW-D",
    difficulty=2,
    durability=3,
    visibility=2,
    cautions=(),
    work=work,
)
