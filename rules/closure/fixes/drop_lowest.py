"""Take the lowest fastenings off and respace the rest."""

from advisor.knowledge import Fix
from advisor.operations.closures import drop_lowest

fix = Fix(
    title="Take out what came too near, and respace the row",
    why="Single fastenings sit in the cloth and go up with it. Where the cloth between them was taken out, one lies in "
    "the seam or too near its neighbor: it comes off, its hole is mended, and the rest is spaced again.",
    wrong_when="The gap across a seam that was moved has become so odd that the whole row would have to be set anew.",
    source="MN-M35",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Metal flies when it is cut: safety glasses.",),
    work=drop_lowest,
)
