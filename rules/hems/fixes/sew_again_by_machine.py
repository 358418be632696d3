"""Stitch the hem again by machine."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Press the old fold in again and pin it. Stitch where the old line ran, 1 in into the part that "
        "held at both ends. Press."
    )
    needs = (Need("thread to match"),)
    return work_of(
        (mend(view, f"{trouble.place}.edge", "sewn again", "stitch", "straight", (6, 10, 18), says, "finish", *needs),)
    )


fix = Fix(
    title="Stitch the hem again by machine",
    why="A row by machine holds longer than slack stitches by hand, and shows.",
    wrong_when="The rest of the hem is sewn unseen, or the cloth is one for a dress occasion.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=3,
    cautions=(),
    work=work,
)
