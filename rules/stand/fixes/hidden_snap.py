"""A snap between the two buttons."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import hold_between


def work(trouble: Trouble, view: View) -> Work:
    return work_of(hold_between(trouble.place, "snapped"))


fix = Fix(
    title="Sew a hidden snap between the buttons",
    why="A small snap between the layers holds the front where it opens; nothing is seen and nothing is cut.",
    wrong_when="It strains there: a snap then springs open with every breath.",
    source="MYHANDMADE",
    difficulty=1,
    durability=3,
    visibility=1,
    work=work,
)
