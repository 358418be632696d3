"""A darn woven over the hole."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import darn_hole, press_mend


def work(trouble: Trouble, view: View) -> Work:
    return work_of((darn_hole(view, trouble.place), press_mend(view, trouble.place)))


fix = Fix(
    title="Darn the hole",
    why=(
        "New threads take the place of the cut ones, begun and ended 1/2 in into sound cloth on both sides of the hole."
    ),
    wrong_when="Something pulls at the place: a darn carries itself and little more.",
    source="SCHOOLSEW-D",
    difficulty=2,
    durability=3,
    visibility=3,
    work=work,
)
