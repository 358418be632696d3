"""Set one fastening more at the open end."""

from advisor.knowledge import Fix
from advisor.operations.closures import add_fastening

fix = Fix(
    title="Add a fastening",
    why="One more of the same kind closes what stands open, and nothing else is touched.",
    wrong_when="None of the same kind is to be had, and an odd one at the top would be seen first.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=3,
    work=add_fastening,
)
