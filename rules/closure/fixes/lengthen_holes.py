"""Cut the buttonholes longer and work the new part."""

from advisor.knowledge import Fix
from advisor.operations.closures import lengthen_holes

fix = Fix(
    title="Make the buttonholes longer",
    why="The end away from the edge is opened and worked again, so the buttons stay where they are and pass.",
    wrong_when="The buttons can be changed for smaller ones, or the front has no cloth left inside the holes.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=2,
    cautions=("A buttonhole that was cut stays a hole: the row of marks is checked first.",),
    work=lengthen_holes,
)
