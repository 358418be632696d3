"""Sew the hem again by hand."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Press the old fold in again and pin it. Catch the edge with small slack stitches about 1/2 in "
        "apart, a thread of the outer cloth each time, and 1 in into the part that held. Press."
    )
    needs = (Need("thread to match"),)
    return work_of(
        (mend(view, f"{trouble.place}.edge", "sewn again", "fell", "hand", (12, 20, 40), says, "finish", *needs),)
    )


fix = Fix(
    title="Sew the hem again by hand",
    why="The old fold is pressed in again and caught with small slack stitches: unseen, and no machine.",
    wrong_when="It is stepped on with every stride, or the cloth is too thin to hide a stitch.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=1,
    cautions=(),
    work=work,
)
