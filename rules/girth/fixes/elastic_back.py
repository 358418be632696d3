"""Draw the waist in with elastic in a casing across the back."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.waist_drawn import sew_back_casing, thread_back_elastic


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    return work_of((sew_back_casing(view, lower), thread_back_elastic(view, lower, total)))


fix = Fix(
    title="Draw the back of the waist in with elastic",
    why="A casing on the inside of the back waist holds elastic that draws it in; the waist seam stays sewn, and what "
    "is sewn above it is drawn in with it.",
    wrong_when="A smooth back is wanted, or the cloth is stiff.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=4,
    cautions=("Elastic tires in the wash before the cloth does: leave the casing so that it can be changed.",),
    work=work,
)
