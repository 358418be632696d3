"""Tack the hidden strip between its holes."""

from advisor.knowledge import Fix
from advisor.operations.closures import tack_placket

fix = Fix(
    title="Tack the hidden strip between the holes",
    why="A few stitches half way between each two holes hold the front to its strip, and the buttons stay hidden.",
    wrong_when="The strip is meant to be taken off again soon.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=1,
    work=tack_placket,
)
