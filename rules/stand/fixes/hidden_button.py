"""A hidden button and loop between the two buttons."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import hold_between


def work(trouble: Trouble, view: View) -> Work:
    return work_of(hold_between(trouble.place, "buttoned"))


fix = Fix(
    title="Sew a hidden button and loop between the buttons",
    why=(
        "A flat button on the lower layer and a loop behind the upper one hold better than a snap, and open "
        "only when they are asked to."
    ),
    wrong_when="The front is one layer only, so that the stitches of the loop show.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    work=work,
)
