"""Strips of matching cloth in both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.bodies import baste_in, cut_strips, finish_sides, open_sides, set_in
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    ops = (
        open_sides(view, place),
        cut_strips(view, place, total, "matching cloth, washed"),
        baste_in(view, place, "strip"),
        *set_in(view, place, "strip", parts(total, 2, view.tape, "side")),
        finish_sides(view, place, "plain"),
    )
    return work_of(ops, total=total)


fix = Fix(
    title="Let strips of matching cloth into the side seams",
    why=(
        "A strip from the hem up, its point in the sleeve as a gusset under the arm, gives half of the amount "
        "at each side. Under a hanging arm it is hardly seen."
    ),
    wrong_when=(
        "There is no cloth that matches in color and age, or the shirt is tight over the shoulders: strips at "
        "the sides do not help there."
    ),
    source="LEONVPL",
    difficulty=3,
    durability=5,
    visibility=2,
    cautions=("Wash the cloth of the strips first, as the garment was washed.",),
    work=work,
)
