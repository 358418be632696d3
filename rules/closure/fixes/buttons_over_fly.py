"""Buttons that show down to the waist, a fly zipper below."""

from advisor.knowledge import Fix
from advisor.operations.closures import buttons_over_fly

fix = Fix(
    title="Buttons that show to the waist, a fly zipper below",
    why="Above the waist a row of buttons shows, below it a short zipper lies in a fly: it opens "
    "quickly where it has to, and no button sits where she sits.",
    wrong_when="The closing must be hidden, or the opening ends at the waist. A fly zipper of 5 to 7 "
    "in is usual; a shorter one is hard to step into.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=4,
    cautions=(
        "A buttonhole that was cut stays a hole: the row of marks is checked first.",
        "The strips are cut wider than twice the lap, by both seams; cut at twice the lap they lap too little.",
        "On a small child's garment buttons are loose small parts: keep to the standards in force, or ask a maker.",
    ),
    work=buttons_over_fly,
)
