"""Glue a patch behind the worn hole."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Open a window, keep flames away and read the label of the glue. Glue the piece behind the hole with a "
        "flexible glue made for leather and press it flat under a weight as long as the label says."
    )
    ops = (
        cut_cover(view, place, "glued", "thin leather or firm cloth"),
        close(view, place, "glued", "glue", says, "table", Spread(10, 15, 30)),
    )
    return work_of(ops)


fix = Fix(
    title="Glue a patch behind the worn hole",
    why="Glue makes no needle holes, which in leather and coated cloth stay and tear on.",
    wrong_when="Something pulls at the place, or it is washed hot: glue lets go.",
    source="LEATHER",
    difficulty=1,
    durability=2,
    visibility=3,
    cautions=("Glue gives off fumes that burn: open a window, keep flames away, and do as its label says.",),
    work=work,
)
