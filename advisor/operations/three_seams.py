"""A waist taken in at three seams: the center back as far as the back pockets bear it, both sides the rest."""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of
from advisor.core.model import Mm, Put
from advisor.core.work import Op
from advisor.figures import fitting, seams
from advisor.figures.formula import figure
from advisor.knowledge.view import View, plain
from advisor.operations.girth import (
    POCKETS,
    baste_center_back,
    baste_sides,
    center_run_out,
    finish_sides,
    open_center_back,
    open_sides,
    press_seams,
    take_in_center_back,
    take_in_sides,
)
from advisor.operations.marks import down_to_mark, parts


def center_bears(gap: Mm, below: Mm, loose_to: str, amount: Mm) -> Mm:
    """What the center back may take of `amount`, mm: no more than half, and what leaves the pockets apart."""
    spare = max(gap - seams.POCKETS_APART, Mm(0))
    if loose_to == "hip":
        return min(amount / 2, spare)
    if below >= fitting.HIP_DEPTH:
        return amount / 2
    return min(amount / 2, seams.bears_at(spare=spare, depth=below, length=fitting.HIP_DEPTH))


def at_center(view: View, lower: str, total: Figure) -> Figure:
    """The part of `total` that goes at the center back, on a mark of the tape."""
    half = figure(seams.each, "half", total=total, seams=2)
    pockets = view.one(POCKETS)
    gap, below, loose = view.measure(f"{pockets}.gap"), view.measure(f"{pockets}.below"), f"{lower}.loose_to"
    bears = center_bears(mm_of(gap), mm_of(below), view.word(loose), mm_of(total))
    if bears == mm_of(half):
        return down_to_mark(half, view.tape, "center")
    apart = plain("apart", seams.POCKETS_APART, "common-practice")
    most = figure(seams.over_limit, "spare_at_pockets", total=gap, limit=apart)
    if view.word(loose) != "hip":
        hip = plain("hip", fitting.HIP_DEPTH, "HTS")
        most = figure(seams.bears_at, "center_bears", spare=most, depth=below, length=hip)
    return down_to_mark(most, view.tape, "center")


def take_in_three(view: View, lower: str, total: Figure) -> tuple[tuple[Op, ...], dict[str, Figure]]:
    """The operations, and the figures they share."""
    center = at_center(view, lower, total)
    sides = figure(seams.over_limit, "sides", total=total, limit=center)
    takes = parts(sides, 2, view.tape, "side")
    run_out = center_run_out(view, lower, center)
    ops = (
        open_center_back(view, lower),
        baste_center_back(view, lower, center, run_out, "inside"),
        open_sides(view, lower),
        baste_sides(view, lower, sides, takes),
        take_in_center_back(view, lower, center, run_out, felled=False, alone=False),
        *take_in_sides(view, lower, takes),
        _finished_without_pressing(finish_sides(view, lower)),
        press_seams(view, lower),
    )
    return ops, {"center": center, "sides": sides}


def _finished_without_pressing(op: Op) -> Op:
    """The side seams finished; all three are pressed together at the end."""
    states = [state for state in (*op.expects, *op.effects) if isinstance(state, Put)]
    seam, sewn = (next(state for state in states if state.word == word) for word in ("basted", "sewn"))
    return replace(
        op,
        says="Take the basting out and finish the edges of both side seams. Trim only after a day of wear and a wash.",
        expects=(seam,),
        effects=(sewn,),
    )
