"""Close one end of the buttonholes with a bar."""

from advisor.knowledge import Fix
from advisor.operations.closures import shorten_holes

fix = Fix(
    title="Make the buttonholes shorter",
    why="A bar closes the end away from the edge, so the buttons no longer slip out. It can be unpicked.",
    wrong_when="The buttons can be changed for larger ones that pass: an edge bears a button 1/4 in "
    "larger or smaller as it is.",
    source="SECRETGRAT",
    difficulty=1,
    durability=3,
    visibility=2,
    work=shorten_holes,
)
