"""Patch it from behind."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Baste the piece behind the hole. Trim loose threads and zigzag the edge of the hole down on it, then the "
        "edge of the piece: medium width, stitches well apart, for a dense zigzag cuts weak cloth like a perforation."
    )
    ops = (
        cut_cover(view, place, "patched", "washed woven cloth of like weight and color"),
        close(view, place, "patched", "patch", says, "zigzag", Spread(15, 25, 40)),
    )
    return work_of(ops)


fix = Fix(
    title="Patch it from behind",
    why="Cloth of like weight goes behind the hole, from sound cloth to sound cloth: 3/4 in past the weak part, 1 in "
    "at knees and seats. The edge of the hole is sewn down on it.",
    wrong_when="The place is knelt on: then the wear should be on the patch, and it goes on top.",
    source="SCHOOLSEW-P",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Open a leg seam for it if the arm of the machine does not reach.",),
    work=work,
)
