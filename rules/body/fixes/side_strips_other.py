"""Strips of another cloth in both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.bodies import baste_in, cut_strips, finish_sides, open_sides, set_in
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    ops = (
        open_sides(view, place),
        cut_strips(view, place, total, "cloth of like weight, washed, for strips that show"),
        baste_in(view, place, "strip"),
        *set_in(view, place, "strip", parts(total, 2, view.tape, "side")),
        finish_sides(view, place, "plain"),
    )
    return work_of(ops, total=total)


fix = Fix(
    title="Let strips of another cloth into the side seams",
    why=(
        "The same strips in a cloth that is meant to be seen: a stripe down each side and under the arm gives "
        "the width, and looks like a design if cuffs or collar take it up."
    ),
    wrong_when="The garment must look as it came, or is worn where a stripe is out of period.",
    source="UNFASH",
    difficulty=3,
    durability=5,
    visibility=4,
    cautions=("Wash it first, and try in water whether its color runs.",),
    work=work,
)
