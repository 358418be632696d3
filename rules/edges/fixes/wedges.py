"""Set wedges into the side seams of the upper part."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, press_upper
from advisor.operations.widening import cut_wedges, open_sides, set_wedges


def work(trouble: Trouble, view: View) -> Work:
    wanting = amount(trouble, "wanting")
    return work_of(
        at_waist(
            view,
            trouble.place,
            cut_wedges(view, trouble.place, wanting, "matching cloth"),
            open_sides(view, trouble.place),
            set_wedges(view, trouble.place, wanting),
            press_upper(view, trouble.place),
        )
    )


fix = Fix(
    title="Set wedges into the upper side seams",
    why=(
        "A wedge in each side seam, widest at the waist and running to nothing above, gives the width that the "
        "allowances do not hold."
    ),
    wrong_when="There is no cloth that matches after a wash, or the side seams are felled.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=4,
    cautions=("Wash the cloth of the wedges first, as the garment was washed.",),
    work=work,
)
