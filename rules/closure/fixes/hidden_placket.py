"""Close the front with buttons in a hidden placket."""

from advisor.knowledge import Fix
from advisor.operations.closures import hidden_placket

fix = Fix(
    title="Close it with a hidden button placket",
    why="The holes lie in a folded strip behind the front, tacked to it between them; outside nothing "
    "shows. No hole goes through the front, the strip can be renewed, and no single part takes all the "
    "pull: it takes longest and lasts best.",
    wrong_when="There is no cloth for the strips, the cloth is so heavy that four layers lie like a "
    "board, or the work has to be done today.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "The strips are cut wider than twice the lap, by both seams; cut at twice the lap they lap too little.",
        "Without tacks between the holes the front swings off the strip.",
        "On a small child's garment buttons are loose small parts: keep to the standards in force, or ask a maker.",
    ),
    work=hidden_placket,
)
