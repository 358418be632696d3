"""Bind the frayed edge."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Trim the threads. Lay opened bias tape along the edge, right sides together, and sew 1/8 in "
        "inside the sound cloth; turn it wholly inside over the edge, so that the old length stays, "
        "press, and sew its other fold down."
    )
    needs = (
        Need("bias tape to go round each end"),
        Need("thread to match"),
    )
    return work_of(
        (mend(view, f"{trouble.place}.edge", "bound", "bind", "straight", (25, 40, 60), says, "finish", *needs),)
    )


fix = Fix(
    title="Bind the frayed edge",
    why="The edge is trimmed to sound cloth and bound with bias tape turned inside: a clean edge at the old length.",
    wrong_when="It must look as it came, or the edge is a faded one worth keeping.",
    source="BIASHEM",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Trim no more than the fray: 1/8 in of sound cloth is enough to sew to.",),
    work=work,
)
