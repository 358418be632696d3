"""Pin the band for tonight."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Close the band as it is worn and pin it from inside through all but the outer layer, across the line of the "
        "pull, in sound cloth."
    )
    key = f"{trouble.place}.fastening"
    pinned = mend(view, key, "pinned", "pin", "hand", (1, 2, 3), says, "closure", Need("strong safety pin"))
    return work_of((pinned,))


fix = Fix(
    title="Pin the band for tonight",
    why="A strong safety pin from inside, across the lap, holds for an evening.",
    wrong_when="A child wears it, or she dances in it.",
    source="common-practice",
    difficulty=1,
    durability=1,
    visibility=2,
    cautions=("The point downward and under cloth.",),
    work=work,
)
