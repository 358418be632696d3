"""Let the inner seams out at the crotch."""

from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.lower import points_give
from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.crotch import move_points
from advisor.operations.legs import open_leg_seams, sew_leg_seams

KEEP = inches("3/8")
"""What stays at a seam under strain: common practice, no source."""


def work(trouble: Trouble, view: View) -> Work:
    legs, by = view.one("legs"), amount(trouble, "by")
    keep = plain("keep", KEEP, "common-practice")
    held = figure(points_give, "held", allowance=view.measure(f"{legs}.inseam_allowance"), keep=keep)
    ops = (
        open_leg_seams(view, legs, "inseams"),
        move_points(view, trouble.place, legs, by, 1),
        sew_leg_seams(view, legs, "inseams"),
    )
    return work_of(ops, held=held)


fix = Fix(
    title="Let the inner seams out at the crotch",
    why="Front and back points move out into the allowances: the seam from front to back gains on both, half of it "
    "counted down, and each thigh gains at the top.",
    wrong_when="The allowance was trimmed near the crotch, as it mostly is, or the old line shows.",
    source="TM227-34",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("Sew it twice with short stitches: a crotch seam is the first to give.",),
    work=work,
)
