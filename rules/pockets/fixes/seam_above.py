"""Sew across above the hole."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Turn the bag out, sew straight across just above the hole through both layers, twice, from seam to seam, into "
        "firm cloth. Cut what lies below to 1/2 in and overcast it."
    )
    sewn = mend(
        view, f"{trouble.place}.bag", "seamed", "seam", "straight", (5, 8, 12), says, "mend", Need("strong thread")
    )
    return work_of((sewn,))


fix = Fix(
    title="Sew across above the hole",
    why="A double seam straight across above the hole closes it in minutes; the pocket is so much shallower.",
    wrong_when="The pocket would no longer hold a hand, or the bag is thin all over.",
    source="LTA-POCKET",
    difficulty=1,
    durability=2,
    visibility=1,
    cautions=(),
    work=work,
)
