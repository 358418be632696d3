"""Close what the zipper does not reach with hooks."""

from advisor.knowledge import Fix
from advisor.operations.closures import hooks_at_top

fix = Fix(
    title="Hooks and eyes above the zipper",
    why="The zipper stays where it is; hooks under the edge and eyes or thread loops opposite hold the "
    "short rest at the top.",
    wrong_when="More than 2 in stand open, or the front is pulled hard there: hooks unhook under a side pull.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=2,
    work=hooks_at_top,
)
