"""Patch the lining."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Trim the tear to whole cloth, cut a patch 3/4 in past it all round, turn its edges under, press, and fell it "
        "down by hand from the side that is seen, 1 in past the tear."
    )
    key = f"{trouble.place}.state"
    return work_of(
        (mend(view, key, "patched", "patch", "hand", (20, 30, 45), says, "mend", Need("lining cloth, a scrap")),)
    )


fix = Fix(
    title="Patch the lining",
    why="A patch of lining silk or of like cloth, its edges turned under, closes a tear that does not rub.",
    wrong_when="It lies on the seat or the knee of a skirt, where a patch is felt, or the cloth tears beside it.",
    source="SEWAHOLIC",
    difficulty=2,
    durability=2,
    visibility=1,
    cautions=(),
    work=work,
)
