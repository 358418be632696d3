"""Shorten a zipper that lies behind a fly or a lining, at its lower end."""

from advisor.knowledge import Fix
from advisor.operations.closures import shorten_from_bottom

fix = Fix(
    title="Shorten the covered zipper from the bottom",
    why="The fly, facing or lining is opened, the zipper comes out, gets a new bottom stop of whip "
    "stitches, is cut below it and goes back in, and all is closed over it again.",
    wrong_when="It comes apart at the bottom, its teeth are metal, or it is worn. How much tape to "
    "leave below the new stop is told differently: 3/4 in here, 1 in by another source; either holds.",
    source="WZIP",
    difficulty=4,
    durability=4,
    visibility=2,
    cautions=(
        "A zipper that was cut cannot be made longer again.",
        "The topstitching of a fly has to be matched in thread and line, or it shows.",
    ),
    work=shorten_from_bottom,
)
