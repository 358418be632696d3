"""A patch glued behind the hole, for leather and coated cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import cut_patch, glue_patch


def work(trouble: Trouble, view: View) -> Work:
    return work_of((cut_patch(view, trouble.place), glue_patch(view, trouble.place)))


fix = Fix(
    title="Glue a patch behind the hole",
    why=(
        "Every needle hole stays in leather and coated cloth, and a row of them is a line to tear along. Glue makes "
        "none."
    ),
    wrong_when="Something pulls at the place, or it is washed hot: glue lets go.",
    source="LEATHER",
    difficulty=1,
    durability=2,
    visibility=3,
    cautions=("Glue gives off fumes that burn: open a window, keep flames away, and do as its label says.",),
    work=work,
)
