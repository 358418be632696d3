"""Moving a waist seam up or down.

The law: what is taken out of the garment at a seam is taken out of every length that runs across it, as
many times as it crosses. The garment says what crosses; nobody writes "the zipper is then too long".
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Op, Spread
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge.view import View, plain


def mark_new_waist(view: View, seam: str) -> Op:
    """Mark the new line on the upper part, on the body."""
    return Op(
        id=f"mark {seam}.line",
        stage="level",
        verb="mark",
        places=(seam,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            "With the garment on, mark the new waist along a narrow elastic tied round the body: all round, level on "
            "the body and not measured from the floor. Let it dip up to 1/2 in at center front if the body does. "
            "Where left and right differ by 1/4 in or less take the middle; otherwise mark each side for itself."
        ),
        expects=(Put(f"{seam}.line", "none"),),
        effects=(Put(f"{seam}.line", "marked"),),
    )


def cut_new_waist(view: View, seam: str, upper: str, raised: Figure) -> Op:
    """Cut the upper part `raised` mm higher, a seam allowance below the new line.

    Every length across the seam loses `raised`, as many times as it crosses; the upper edge is from now
    on as wide as the part is at the new line.
    """
    allowance = plain("seam_allowance", DOMESTIC_ALLOWANCE, "common-practice")
    widening = Figure(
        "edge_at_new_line",
        view.mm(f"{upper}.edge_at_mark") - view.mm(f"{upper}.edge"),
        "round at the new line less round at the old",
        (f"{upper}.edge_at_mark", f"{upper}.edge"),
        "case",
    )
    crossing = tuple(Change(c.length, times(raised, -c.times, f"{raised.id} across")) for c in view.across(seam))
    return Op(
        id=f"cut {seam}.line",
        stage="level",
        verb="cut",
        places=(upper,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"Cut {view.words(upper)} {{seam_allowance}} below the new line, measured from the line and not from the "
            "floor or the old edge: that is the seam allowance, on the side that falls away."
        ),
        expects=(Put(f"{seam}.line", "marked"), Put(f"{seam}.seam", "open")),
        effects=(*crossing, Change(f"{upper}.edge", widening), Put(f"{seam}.line", "cut")),
        reversible=False,
        check_before=(
            "the new line is level on the body, sitting and bending have been tried with it pinned, "
            "and the allowance lies below it"
        ),
        figures={"raise": raised, "seam_allowance": allowance},
    )
