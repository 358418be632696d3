"""Set wedges of another cloth into the side seams of the upper part."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, press_upper
from advisor.operations.widening import cut_wedges, open_sides, set_wedges


def work(trouble: Trouble, view: View) -> Work:
    wanting = amount(trouble, "wanting")
    return work_of(
        at_waist(
            view,
            trouble.place,
            cut_wedges(view, trouble.place, wanting, "washed cloth of like weight, meant to be seen"),
            open_sides(view, trouble.place),
            set_wedges(view, trouble.place, wanting),
            press_upper(view, trouble.place),
        )
    )


fix = Fix(
    title="Set in wedges of another cloth",
    why=(
        "Where nothing matches, wedges of a cloth that is plainly another look meant: a darker one of like weight, "
        "or one used elsewhere on the garment."
    ),
    wrong_when="The garment must look as it came, or no washed cloth of like weight is to be had.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=5,
    cautions=("Wash it first with the garment, or beside a white rag: dark cloth bleeds.",),
    work=work,
)
