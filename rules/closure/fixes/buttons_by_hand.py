"""Close the front with buttons that show, the holes worked by hand."""

from advisor.knowledge import Fix
from advisor.operations.closures import buttons

fix = Fix(
    title="Close it with buttons that show, holes worked by hand",
    why="As with a machine, but every hole is slit, overcast and covered with close stitches by hand, "
    "a quarter of an hour and more for each. Well worked, they wear as long as the front.",
    wrong_when="The closing must be hidden, the cloth frays as it is touched, or a row of hand-worked "
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
    work=buttons,
)
