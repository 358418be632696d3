"""The slits cut further up and bound anew."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.cuffs import lengthen_slits


def work(trouble: Trouble, view: View) -> Work:
    return work_of(lengthen_slits(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Cut the slit further up and bind it again",
    why="The slit gets back what the sleeve lost, at its upper end, and its band is pieced or cut new.",
    wrong_when=(
        "The slit ends in a worked gauntlet with a point: that is taken off whole and set higher, which is "
        "work for patient hands."
    ),
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("The cut cannot be taken back: reinforce the new end before it is made.",),
    work=work,
)
