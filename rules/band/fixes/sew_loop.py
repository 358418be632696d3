"""Sew the loop on again."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend, patch_loop, patched


def work(trouble: Trouble, view: View) -> Work:
    band = trouble.place
    says = (
        "Fold the ends of the loop under as they were, a finger's room under it, and sew each end with a close bar, "
        "forward and back, through all layers and the patch where there is one. Pull a belt through."
    )
    key = f"{band}.loop"
    needs = (Need("strong thread"), Need("stout needle"))
    sewn = mend(view, key, "sewn on", "sew", "straight", (6, 10, 15), says, "finish", *needs, given=patched(view, band))
    return work_of((*patch_loop(view, band), sewn))


fix = Fix(
    title="Sew the loop on again",
    why="The loop goes back where it sat, both ends barred; where the cloth tore, a patch of the same weight "
    "behind takes the pull.",
    wrong_when="The loop itself is worn through: take one that is not needed, or a strip of the hem.",
    source="LOOPMEND",
    difficulty=1,
    durability=4,
    visibility=2,
    cautions=("Thick layers break a needle: turn the wheel by hand, eyes away.",),
    work=work,
)
