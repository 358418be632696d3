"""All buttons taken off and new ones sewn on."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import new_buttons


def work(trouble: Trouble, view: View) -> Work:
    return work_of(new_buttons(trouble.place))


fix = Fix(
    title="Sew a new set of buttons on",
    why=(
        "A new set ends the search for one that matches, and dates or dresses the costume as nothing else "
        "does for the money."
    ),
    wrong_when="The old buttons are of the period, or worth more than the shirt.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=2,
    cautions=("Wider buttons will not pass the old holes, narrower ones slip out of them.",),
    work=work,
)
