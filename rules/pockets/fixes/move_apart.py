"""Take the back pockets off and set them further apart."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.pockets import set_pockets_apart, take_pockets_off


def work(trouble: Trouble, view: View) -> Work:
    return work_of(
        (
            take_pockets_off(view, trouble.place),
            set_pockets_apart(view, trouble.place, amount(trouble, "apart")),
        )
    )


fix = Fix(
    title="Set the back pockets further apart",
    why="Both pockets come off and go back half of the amount further out each, so that they stand as far from the "
    "seam as they should.",
    wrong_when="The cloth has faded round the pockets, or they hide a reinforcement: the old outline then shows.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=4,
    cautions=("Unpick one corner first and look under it in daylight: dark cloth there will show for good.",),
    work=work,
)
