"""Let out the side seams of the upper part."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, press_upper
from advisor.operations.widening import let_out_sides, open_sides


def work(trouble: Trouble, view: View) -> Work:
    wanting = amount(trouble, "wanting")
    return work_of(
        at_waist(
            view,
            trouble.place,
            open_sides(view, trouble.place),
            let_out_sides(view, trouble.place, wanting),
            press_upper(view, trouble.place),
        )
    )


fix = Fix(
    title="Let out the upper side seams",
    why=(
        "Both side seams are sewn again nearer their raw edges, front and back alike. Each seam gives twice what "
        "its allowance has beyond the 3/8 in that must stay."
    ),
    wrong_when="The old line shows in daylight after steaming, or the allowance was trimmed or clipped.",
    source="SCL",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("Old needle holes and a faded line may stay to be seen.",),
    work=work,
)
