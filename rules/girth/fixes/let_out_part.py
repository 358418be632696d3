"""Let the waist out as far as the center-back seam holds cloth, and name what is left."""

from dataclasses import replace

from advisor.core.figure import mm_of
from advisor.figures.formula import figure
from advisor.figures.letout import KEEP, holds, left_over
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.girth import (
    baste_center_back,
    center_run_out,
    let_out_center_back,
    open_center_back,
    press_seams,
    with_waist_open,
)
from advisor.operations.marks import down_to_mark


def work(trouble: Trouble, view: View) -> Work:
    lower = trouble.place
    allowance, keep = view.measure(f"{lower}.allowance"), KEEP.figure("keep", "trouser center back", "least")
    held = figure(holds, "held", allowance=allowance, keep=keep, seams=1)
    total = down_to_mark(held, view.tape, "total")
    run_out = center_run_out(view, lower, total)
    stays = figure(left_over, "stays", allowance=allowance, total=total, seams=1)
    ops = (
        open_center_back(view, lower),
        baste_center_back(view, lower, total, run_out, "outside"),
        let_out_center_back(view, lower, total, run_out, stays),
        press_seams(view, lower),
    )
    return replace(work_of(with_waist_open(view, ops), held=held), leaves=trouble.mm - mm_of(total))


fix = Fix(
    title="Let out the center-back seam as far as it goes",
    why="The seam gives twice its allowance less the 3/8 in that must stay on each side; what it does not hold stays "
    "tight.",
    wrong_when="What is left is still too tight to sit in: then strips at the sides are the better work.",
    source="SCL",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",),
    work=work,
)
