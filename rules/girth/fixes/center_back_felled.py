"""Take the waist in at a felled center-back seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import (
    baste_center_back,
    center_run_out,
    open_center_back,
    press_seams,
    take_in_center_back,
    with_waist_open,
)


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    run_out = center_run_out(view, lower, total)
    ops = (
        open_center_back(view, lower),
        baste_center_back(view, lower, total, run_out, "inside"),
        take_in_center_back(view, lower, total, run_out, felled=True),
        press_seams(view, lower),
    )
    return work_of(with_waist_open(view, ops))


fix = Fix(
    title="Take in the felled center-back seam",
    why="The felled seam is opened, sewn half of the amount further in on each side, and felled and topstitched again. "
    "It outlasts the cloth round it.",
    wrong_when="The machine does not sew the layers where the felled seams cross: try a sample of the true thickness "
    "first.",
    source="NINEL",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "Wash and dry it before you measure: denim still draws up.",
        "The old rows of stitching leave paler lines in worn denim.",
    ),
    work=work,
)
