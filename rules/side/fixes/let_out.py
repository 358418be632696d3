"""The side seams let out beside the openings."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import open_beside, press_side, sew_beside


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    return work_of((open_beside(view, place), sew_beside(view, place, gape), press_side(view, place)))


fix = Fix(
    title="Let out the side seams beside it",
    why=(
        "Where the body pulls the opening open the garment is too small there. The side seams give twice what their "
        "allowance has beyond the 3/8 in that must stay, and the opening shuts by itself."
    ),
    wrong_when="The old line shows in daylight after steaming, or the allowance was trimmed or clipped.",
    source="SCL",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("Old needle holes and a faded line may stay to be seen.",),
    work=work,
)
