"""Ease the longer lower edge onto the upper."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist
from advisor.operations.widening import ease_other_in


def work(trouble: Trouble, view: View) -> Work:
    wanting = amount(trouble, "wanting")
    return work_of(at_waist(view, trouble.place, ease_other_in(view, trouble.place, wanting)))


fix = Fix(
    title="Ease the lower edge onto the upper",
    why=(
        "The upper edge is stretched a little and the longer lower edge eased under it. Nothing is opened but the "
        "waist seam itself."
    ),
    wrong_when=(
        "The waist has no room to give up: the seam comes out as long as the shorter edge allows. Never past 1/2 in."
    ),
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=1,
    cautions=("The waist comes out tighter by what is eased: sit down in it before you sew.",),
    work=work,
)
