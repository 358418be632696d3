"""Take the lowest fastenings off and respace the rest."""

from advisor.knowledge import Fix
from advisor.operations.closures import drop_lowest

fix = Fix(
    title="Take off the lowest fastenings",
    why="What lies past the new end of the opening goes, its holes are mended, and the row ends with "
    "the opening again. The fastenings that are left stay what they are.",
    wrong_when="The gap across a seam that was moved has become so odd that the whole row would have to be set anew.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Metal flies when it is cut: safety glasses.",),
    work=drop_lowest,
)
