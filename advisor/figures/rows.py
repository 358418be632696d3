"""Rows of fastenings down a front: the run they close, the gaps, and the lap that buttonholes want."""

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Mm, formula

END = inches("1")
"""From the last fastening to the end of the opening: common practice, no source."""
FLY_GAP = inches("2")
"""Most between buttons at a fly, 1 1/2 to 2 in: common practice, no source."""
BODICE_GAP = inches("3 1/2")
"""Most between buttons on a bodice, 3 to 3 1/2 in. Source IASRI-BTN."""
BETWEEN = inches("1/4")
"""Least from the edge of one button to the next: common practice, no source."""
HOOK_GAP = inches("1 1/4")
"""Most between hooks. Source NEWDRESS-117 (down a bodice)."""


@formula("rows.last_down", words="{run} - 1 in", source="common-practice", gives="mm")
def last_down(run: Mm) -> Mm:
    """From the top edge to the last fastening of a run that ends in a closed seam.

    Millimetres. FigureError if the run is not over 1 in. Run less 1 in.
    Worked: run=20 1/2 in -> 19 1/2 in. Common practice, no source.
    """
    need(run > END, "the run is too short for a row of fastenings", "close it with hooks")
    return run - END


@formula("rows.gap", words="{lower} - {upper}", source="common-practice", gives="mm")
def gap(upper: Mm, lower: Mm) -> Mm:
    """From one fastening to the next, both measured from the top edge.

    Millimetres. FigureError if a place lies above the edge or they are out of order. Lower less upper.
    Worked: upper=7 in, lower=10 1/2 in -> 3 1/2 in. Geometry, no source.
    """
    not_negative(upper=upper, lower=lower)
    need(lower >= upper, "the fastenings are not in order down the front")
    return lower - upper


@formula("rows.fly_part", words="{opening} - {to_waist}", source="common-practice", gives="mm")
def fly_part(opening: Mm, to_waist: Mm) -> Mm:
    """What of an opening lies below the waist, for a fly.

    Millimetres. FigureError if it ends at or above the waist. Opening less the way down to the waist.
    Worked: opening=20 1/2 in, to_waist=14 in -> 6 1/2 in. Geometry, no source.
    """
    positive(opening=opening, to_waist=to_waist)
    need(opening > to_waist, "the opening ends at or above the waist, so there is no fly")
    return opening - to_waist


@formula("rows.lap_crosswise", words="{start} + {hole}", source="common-practice", gives="mm")
def lap_crosswise(start: Mm, hole: Mm) -> Mm:
    """The lap that crosswise holes want: the lower front must lie behind the whole hole.

    Millimetres; `start` is from the edge to the hole. FigureError if either is not more than 0.
    Start + hole. Worked: start=1/2 in, hole=7/8 in -> 1 3/8 in. Geometry, no source.
    """
    positive(start=start, hole=hole)
    return start + hole


@formula("rows.lap_upright", words="{diameter} x 3 / 2", source="HB-BH", gives="mm")
def lap_upright(diameter: Mm) -> Mm:
    """The lap that upright holes down its middle want: three quarters of the button to either side.

    Millimetres. FigureError if the diameter is not more than 0. One and a half diameters.
    Worked: diameter=3/4 in -> 1 1/8 in. Source HB-BH (three quarters from center line to edge).
    """
    positive(diameter=diameter)
    return diameter * 3 / 2
