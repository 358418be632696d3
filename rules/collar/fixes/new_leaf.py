"""Make a new collar of matching cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.collars import new_leaf, open_leaf, press_collar


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of(
        (open_leaf(view, place), *new_leaf(view, place, "matching cloth, washed"), press_collar(view, place))
    )


fix = Fix(
    title="Make a new collar of matching cloth",
    why="A new leaf is cut by the old one and sewn into the old seam. It outlasts the rest of the shirt.",
    wrong_when="The cloth has faded: the new collar will be darker than the shirt until it is washed often.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=("Wash the cloth first, or the collar draws up in the first wash.",),
    work=work,
)
