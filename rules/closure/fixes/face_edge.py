"""Face or bind the bare edges of the opening."""

from advisor.knowledge import Fix
from advisor.operations.closures import face_edge

fix = Fix(
    title="Face the edges of the opening",
    why="A tape or a strip of thin cloth takes the raw edge inside and holds it at its length.",
    wrong_when="A zipper or strips are about to be sewn there: they finish the edge themselves.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    work=face_edge,
)
