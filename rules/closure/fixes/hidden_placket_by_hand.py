"""Close the front with buttons in a hidden placket, the holes worked by hand."""

from advisor.knowledge import Fix
from advisor.operations.closures import hidden_placket

fix = Fix(
    title="Close it with a hidden button placket, holes worked by hand",
    why="The holes lie in a folded strip behind the front and are covered with close stitches by hand "
    "before or after it is sewn on. It takes longest of all and lasts best; no one sees an uneven "
    "hole.",
    wrong_when="There is no cloth for the strips, the cloth is so heavy that four layers lie like a "
    "board, or the work has to be done today.",
    source="common-practice",
    difficulty=5,
    durability=5,
    visibility=2,
    cautions=(
        "The strips are cut wider than twice the lap, by both seams; cut at twice the lap they lap too little.",
        "Without tacks between the holes the front swings off the strip.",
        "On a small child's garment buttons are loose small parts: keep to the standards in force, or ask a maker.",
    ),
    work=hidden_placket,
)
