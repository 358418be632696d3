"""Buttons down to the waist with holes worked by hand, a fly zipper below."""

from advisor.knowledge import Fix
from advisor.operations.closures import buttons_over_fly

fix = Fix(
    title="Hand-worked buttonholes to the waist, a fly zipper below",
    why="Above the waist a row of buttons shows, their holes covered with close stitches by hand; "
    "below it a short zipper lies in a fly.",
    wrong_when="The closing must be hidden, the opening ends at the waist, or a row of hand-worked "
    "holes has never been tried on a scrap.",
    source="common-practice",
    difficulty=5,
    durability=4,
    visibility=4,
    cautions=(
        "A buttonhole that was cut stays a hole: the row of marks is checked first.",
        "The strips are cut wider than twice the lap, by both seams; cut at twice the lap they lap too little.",
        "On a small child's garment buttons are loose small parts: keep to the standards in force, or ask a maker.",
    ),
    work=buttons_over_fly,
)
