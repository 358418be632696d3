"""A patch between the layers, the hole cut again."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import patch_hole


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of(patch_hole(view, place, view.word(f"{place}.hole")))


fix = Fix(
    title="Patch the buttonhole and cut it again",
    why=(
        "A scrap between facing and front is stitched through all three layers, and the hole is worked and "
        "cut again through it, as long as it was."
    ),
    wrong_when="There is no facing, so that the scrap shows inside.",
    source="COLO8528",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("Work one on scraps of the same layers first.",),
    work=work,
)
