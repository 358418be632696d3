"""Cut the cord short and tack it at center back."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import tack_cord


def work(trouble: Trouble, view: View) -> Work:
    return work_of((tack_cord(view),))


fix = Fix(
    title="Cut the cord short and tack it at center back",
    why="Sewn down at center back it cannot be pulled out to one side, and an end of 3 in or less catches on little.",
    wrong_when="It is at the neck or at a hood: there no cord is allowed at all.",
    source="CPSC-DRAW",
    difficulty=1,
    durability=4,
    visibility=2,
    work=work,
)
