"""Close the front with buttons that show."""

from advisor.knowledge import Fix
from advisor.operations.closures import buttons

fix = Fix(
    title="Close it with buttons that show",
    why="Two strips make a lap under and a firm edge over it, and a row of buttons closes exactly the "
    "run of the opening: one at the fullest part, one at the waist, the rest between. Crosswise holes "
    "take the pull.",
    wrong_when="The closing must be hidden, or the lap is too narrow for the buttons. For the distance "
    "to the edge sources give three quarters of the button, or half of it and 1/4 in: they agree only "
    "for a button of 1 in.",
    source="HB-BH",
    difficulty=4,
    durability=4,
    visibility=4,
    cautions=(
        "A buttonhole that was cut stays a hole: the row of marks is checked first.",
        "The strips are cut wider than twice the lap, by both seams; cut at twice the lap they lap too little.",
        "On a small child's garment buttons are loose small parts: keep to the standards in force, or ask a maker.",
    ),
    work=buttons,
)
