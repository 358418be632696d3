"""The missing button sewn on."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import sew_button


def work(trouble: Trouble, view: View) -> Work:
    return work_of((sew_button(trouble.place, "the button"),))


fix = Fix(
    title="Sew the button on",
    why="A button of the same width goes where the old one sat, marked through its hole.",
    wrong_when="The cloth where it sat is torn: sewn on there it tears out again.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
