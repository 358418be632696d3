"""Put a new zipper in behind a fly or a lining."""

from advisor.knowledge import Fix
from advisor.operations.closures import new_zipper

fix = Fix(
    title="Put in a new zipper, behind its cover",
    why="The fly, facing or lining is opened, and a bought zipper of the same kind takes the place of "
    "the old. The next stock length not under the opening is bought and shortened to it.",
    wrong_when="The old one is sound and only needs shortening. A factory sets a zipper 2 to 3 percent "
    "shorter than the edge; at home it is as long as the edge, or the front buckles.",
    source="HB-ZIP",
    difficulty=4,
    durability=4,
    visibility=2,
    cautions=(
        "A zipper on cotton tape is washed hot before it is sewn in.",
        "The topstitching of a fly has to be matched in thread and line, or it shows.",
    ),
    work=new_zipper,
)
