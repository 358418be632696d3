"""Let the waist seam down into its own allowances."""

from dataclasses import replace

from advisor.core.figure import mm_of
from advisor.figures.formula import figure
from advisor.figures.letout import KEEP, holds, left_over, new_line
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.levels import let_down_waist
from advisor.operations.marks import down_to_mark
from advisor.operations.waist import open_waist, press_waist, sew_waist


def work(trouble: Trouble, view: View) -> Work:
    seam = view.one("waist_seam")
    allowance, keep = view.measure(f"{seam}.allowance"), KEEP.figure("keep", "strained", "least")
    held = figure(holds, "held", allowance=allowance, keep=keep, seams=1)
    wanted = amount(trouble, "lowered")
    # Ruled out where the seam holds less; sized all the same, so that the ruling has numbers beside it.
    lowered = wanted if mm_of(wanted) <= mm_of(held) else down_to_mark(held, view.tape, "lowered")
    if not mm_of(lowered):
        return Work({"held": held}, (), leaves=trouble.mm)
    ops = (
        open_waist(view),
        let_down_waist(
            view,
            seam,
            lowered,
            figure(new_line, "each", total=lowered),
            figure(left_over, "stays", allowance=allowance, total=lowered, seams=1),
        ),
        sew_waist(view),
        press_waist(view),
    )
    return replace(work_of(ops, held=held), leaves=trouble.mm - mm_of(lowered))


fix = Fix(
    title="Let the waist seam down into its allowances",
    why="The seam is sewn again nearer the raw edges, half of the amount on each side of it. Needs no cloth.",
    wrong_when="The old stitching or a faded line shows after steaming, or the cloth frays.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("Finish the narrowed allowances and stitch twice: the waist of a one-piece takes the pull of sitting.",),
    work=work,
)
