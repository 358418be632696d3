"""Leave it as it is: always the rival to set a fix against."""

from advisor.knowledge import Fix, nothing_to_do

fix = Fix(
    title="Leave it as it is",
    why="Nothing is cut, sewn or put at risk, and it can still be done another day.",
    wrong_when="It worries the person who wears it, or it gets worse with wear and washing.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=3,
    cautions=(),
    closes=False,
    work=nothing_to_do,
)
