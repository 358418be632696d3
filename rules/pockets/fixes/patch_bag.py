"""Patch the bag."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Turn the bag out, trim the hole, lay firm cotton over it 3/4 in past the weak cloth, turned under all round, "
        "and stitch it down twice. At the bottom fold it round the seam."
    )
    key = f"{trouble.place}.bag"
    return work_of(
        (mend(view, key, "patched", "patch", "straight", (10, 15, 25), says, "mend", Need("pocket cloth, a scrap")),)
    )


fix = Fix(
    title="Patch the bag",
    why="A patch of pocket cloth on the inside of the bag keeps its depth.",
    wrong_when="The cloth round the hole is thin too: a patch tears out of it.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=1,
    cautions=(),
    work=work,
)
