"""The whole white garment bleached and washed."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stains import soak, wash_out


def work(trouble: Trouble, view: View) -> Work:
    return work_of((soak(view, trouble.place, "old"), wash_out(view, trouble.place, once=True)))


fix = Fix(
    title="Bleach the whole of it and wash it",
    why=(
        "Bleach takes the color out of what is left of an old stain. The whole garment is treated, or the "
        "spot would be whiter than the rest; after 15 minutes it has done what it will do."
    ),
    wrong_when="It is silk, wool or colored, or the stain is of rust: chlorine bleach sets rust for good.",
    source="ORANGE-EXT",
    difficulty=2,
    durability=5,
    visibility=1,
    cautions=(
        "Never mix bleach with anything else: it gives off poisonous gas.",
        "Bleach weakens old cloth: do it once and not again.",
    ),
    sews=False,
    work=work,
)
