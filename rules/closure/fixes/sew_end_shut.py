"""Move the zipper up and sew the lower end of the opening shut."""

from advisor.knowledge import Fix
from advisor.operations.closures import sew_end_shut

fix = Fix(
    title="Move the zipper up and sew the end of the opening shut",
    why="The zipper reaches the top edge again, and what it does not reach at the lower end becomes a "
    "seam. Nothing is bought.",
    wrong_when="She then cannot step in: try it with the end of the opening pinned shut first.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("A shorter opening must still let the hips through.",),
    work=sew_end_shut,
)
