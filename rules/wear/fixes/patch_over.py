"""Sew a patch on top."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Turn the edges of the piece under, corners first, and baste it over the hole. Topstitch it all round, twice, "
        "and once round the hole itself. At knees sew one on each leg, level."
    )
    ops = (
        cut_cover(view, place, "covered", "firm washed cloth, matching or meant to be seen", turned=True),
        close(view, place, "covered", "cover", says, "straight", Spread(20, 30, 50)),
    )
    return work_of(ops)


fix = Fix(
    title="Sew a patch on top",
    why="A patch with turned edges is sewn over the hole and takes the wear itself. In a cloth that is plainly "
    "another, and on both knees, it looks meant.",
    wrong_when="The garment must look whole, or the leg is so narrow that its seam would have to be opened.",
    source="SCHOOLSEW-P",
    difficulty=2,
    durability=4,
    visibility=4,
    cautions=("Open the leg seam that is not felled: sewn flat, a patch lies flat.",),
    work=work,
)
