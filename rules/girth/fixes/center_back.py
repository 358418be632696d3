"""Take the waist in at an ordinary center-back seam."""

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
        take_in_center_back(view, lower, total, run_out, felled=False),
        press_seams(view, lower),
    )
    return work_of(with_waist_open(view, ops))


fix = Fix(
    title="Take in the center-back seam",
    why="Half of the amount comes off each side of the center back, running out to nothing over the seat. The gap "
    "between the back pockets shrinks by what the seam takes at their level, not at the waist.",
    wrong_when="Waist and high hip are loose but the hip is snug, and each side loses more than about 3/4 in: a line "
    "that runs out in less than 5 in for every 1/2 in of depth shows a dent. Sources differ on the most: 1 5/8 in (a "
    "suit shop), 3 in (a tailoring page), 4 in (a jeans page).",
    source="THEISM",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("Trim nothing until it has been worn for a day and washed.",),
    work=work,
)
