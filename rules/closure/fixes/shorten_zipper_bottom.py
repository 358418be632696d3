"""Shorten the zipper at its lower end and set it in again."""

from advisor.knowledge import Fix
from advisor.operations.closures import shorten_from_bottom

fix = Fix(
    title="Shorten the zipper from the bottom",
    why="The zipper comes out, gets a new bottom stop of whip stitches, is cut below it and goes back "
    "in. The top, which is seen and handled, stays as it was made.",
    wrong_when="It comes apart at the bottom, its teeth are metal, or it is worn. How much tape to "
    "leave below the new stop is told differently: 3/4 in here, 1 in by another source; either holds.",
    source="WZIP",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("A zipper that was cut cannot be made longer again.",),
    work=shorten_from_bottom,
)
