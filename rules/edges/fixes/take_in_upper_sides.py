"""Take in the side seams of the upper part."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, press_upper, take_in_sides


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    return work_of(
        at_waist(view, trouble.place, take_in_sides(view, trouble.place, excess), press_upper(view, trouble.place))
    )


fix = Fix(
    title="Take in the upper side seams",
    why=(
        "Both side seams move in at the waist and run out to nothing upward: front and back alike, or the back "
        "alone where only the back is too wide. Nothing shows, and the part above fits the waist it is sewn to."
    ),
    wrong_when=(
        "It is close at the chest already, the side seams are felled or carry a pocket, or a print must meet at them."
    ),
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=(
        "Lift both arms in it before the old line comes out.",
        "Leave 1 in of spare for somebody whose weight changes.",
    ),
    work=work,
)
