"""Sew a tape over the frayed fold."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Unpick the hem, draw the frayed edges together with loose stitches, and edgestitch firm tape "
        "over them on both its edges, its ends turned under. Turn the hem up so that the tape lies just "
        "inside the fold, and sew it as it was."
    )
    needs = (
        Need("firm tape to go round each end"),
        Need("thread to match"),
    )
    return work_of(
        (mend(view, f"{trouble.place}.edge", "taped", "tape", "straight", (30, 45, 70), says, "finish", *needs),)
    )


fix = Fix(
    title="Sew a tape over the frayed fold",
    why="Firm tape over the worn fold, inside, takes the rubbing; the hem is turned up again with the tape in "
    "it, a thread shorter.",
    wrong_when="The fray has run up past the fold: then it shows above the tape.",
    source="KICKTAPE",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Trousers come out a thread shorter, less than a mark of the tape.",),
    work=work,
)
