"""Sew the crotch curve lower."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.crotch import mark_curve, press_crotch, sew_curve


def work(trouble: Trouble, view: View) -> Work:
    crotch, down = trouble.place, amount(trouble, "down")
    return work_of((mark_curve(view, crotch, down), sew_curve(view, crotch, down), press_crotch(view, crotch)))


fix = Fix(
    title="Sew the crotch curve lower",
    why="The curve from front to back is sewn a little lower and trimmed, so that it no longer binds. One page "
    "allows this and no more, and prints it as 1 cm and as 1/4 in, which are not the same: the smaller is taken.",
    wrong_when="Folds point to the inner thigh: then width is wanting, and a lower curve makes it worse.",
    source="MAPLE",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("What is trimmed off the curve does not come back.",),
    work=work,
)
