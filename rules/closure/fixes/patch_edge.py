"""Stay and patch the holes that fastenings left."""

from advisor.knowledge import Fix
from advisor.operations.closures import patch_edge

fix = Fix(
    title="Patch the holes in the edge",
    why="A stay first, then a patch that reaches onto sound cloth: the edge bears a fastening again.",
    wrong_when="The patch would show where the front opens; then the part is better covered or made new.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=3,
    work=patch_edge,
)
