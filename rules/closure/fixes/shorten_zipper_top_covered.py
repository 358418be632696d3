"""Shorten a zipper that lies behind a fly or a lining, at its upper end."""

from advisor.knowledge import Fix
from advisor.operations.closures import shorten_from_top

fix = Fix(
    title="Shorten the covered zipper from the top",
    why="The fly, facing or lining is opened, the zipper comes out, the teeth above the new length are "
    "drawn, new stops are set, and all is closed over it again.",
    wrong_when="It is worn, or new top stops are not to be had. One source keeps 1 1/4 in of tape "
    "above the stop and folds 1/2 in of it back; with a facing to tuck it into, less will do.",
    source="IRONF",
    difficulty=4,
    durability=4,
    visibility=2,
    cautions=(
        "A zipper that was cut cannot be made longer again.",
        "Without new top stops the slider runs off: they are set before it goes near and before the cut.",
    ),
    work=shorten_from_top,
)
