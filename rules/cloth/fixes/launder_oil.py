"""Have the oil washed out by a laundry that takes it."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import launder_oil


def work(trouble: Trouble, view: View) -> Work:
    return work_of((launder_oil(view),))


fix = Fix(
    title="Have the oil washed out by a laundry that takes it",
    why="Oil must be out before heat comes near, and washing at home can leave enough of it in "
    "the cloth to heat itself in a pile or a dryer.",
    wrong_when="It is one small spot: that is a stain.",
    source="FD-CORV",
    difficulty=1,
    durability=4,
    visibility=1,
    cautions=(
        "Oil-soaked cotton can catch fire by itself: lay it flat outdoors, and ask the fire service if there is much "
        "of it.",
    ),
    sews=False,
    work=work,
)
