"""Close the front with new snaps."""

from advisor.knowledge import Fix
from advisor.operations.closures import new_snaps

fix = Fix(
    title="Set new snaps",
    why="A row of new snaps closes exactly the run of the opening, one at the fullest part and one at "
    "the waist. They close quickly and need no holes worked.",
    wrong_when="The closing must be hidden, or the cloth is so thin that the posts tear out.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    cautions=(
        "Metal flies when it is cut: safety glasses.",
        "Each snap makes a hole for good.",
    ),
    work=new_snaps,
)
