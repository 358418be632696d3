"""Felled side seams taken in and felled again."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.bodies import baste_sides_in, finish_sides, take_in_sides
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    takes = parts(total, 2, view.tape, "side")
    ops = (
        baste_sides_in(view, place, total, takes),
        *take_in_sides(view, place, takes),
        finish_sides(view, place, "felled"),
    )
    return work_of(ops, total=total)


fix = Fix(
    title="Take in both side seams and fell them again",
    why=(
        "The new seams are sewn inside the old ones, half of the amount in each, and folded flat with two "
        "rows of topstitching as they were: inside and out the shirt looks as it came."
    ),
    wrong_when=(
        "The sleeve is so narrow that the machine cannot reach into it: there the felling is done by hand. "
        "Only the back stands off."
    ),
    source="common-practice",
    difficulty=3,
    durability=5,
    visibility=2,
    cautions=("Trimming for a felled seam cannot be taken back: wear it basted for an hour first.",),
    work=work,
)
