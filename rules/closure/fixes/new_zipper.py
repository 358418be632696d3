"""Put a new zipper in."""

from advisor.knowledge import Fix
from advisor.operations.closures import new_zipper

fix = Fix(
    title="Put in a new zipper",
    why="A bought zipper of the same kind takes the place of the old. Stock goes in steps of 1 in: the "
    "next length not under the opening is bought and shortened to it.",
    wrong_when="The old one is sound and only needs shortening. A factory sets a zipper 2 to 3 percent "
    "shorter than the edge; at home it is as long as the edge, or the front buckles.",
    source="HB-ZIP",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("A zipper on cotton tape is washed hot before it is sewn in.",),
    work=new_zipper,
)
