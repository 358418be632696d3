"""Fitting a waist to the body: how far a seam runs out, quarters, gussets and bands that lengthen a trunk."""

from advisor.figures.exact import inches, need, not_negative, positive, root
from advisor.figures.formula import Mm, formula

HIP_DEPTH = inches("8")
"""From waist to full hip: 7 to 9 in. Source HTS; 8 in is its middle."""
HIGH_HIP_DEPTH = inches("5")
"""A seam that is to leave the high hip alone has run out by here: common practice, no source."""
GUSSET_SIDE = inches("6")
"""How far down each inseam a gusset through the crotch runs: common practice, no source."""


@formula(
    "fitting.run_out",
    words="the smaller of (8 in, the larger of (5 in, 10 x {each_side}))",
    source="common-practice",
    gives="mm",
)
def run_out(each_side: Mm) -> Mm:
    """How far down a seam taken in at the waist runs out, where only the waist is loose.

    Millimeters from the waist. FigureError if the depth is negative. 5 in for every 1/2 in of depth, or
    it dents; no shorter than to the high hip, and no further than the hip, where nothing is to spare.
    Worked: each_side=3/4 in -> 7 1/2 in. Common practice, no source.
    """
    not_negative(depth=each_side)
    return min(HIP_DEPTH, max(HIGH_HIP_DEPTH, 10 * each_side))


@formula("fitting.quarter", words="{round} / 4", source="common-practice", gives="mm")
def quarter(round: Mm) -> Mm:
    """From the center line to a side seam: a quarter of the round.

    Millimeters; front and back taken as alike. FigureError if the round is not more than 0.
    A quarter. Worked: round=36 in -> 9 in. Common practice, no source.
    """
    positive(round=round)
    return round / 4


@formula("fitting.rise_band", words="{short} / 2", source="common-practice", gives="mm")
def rise_band(short: Mm) -> Mm:
    """Finished depth of a band set in all round that gives a trunk loop what it lacks: front and back gain it.

    Millimeters. FigureError if negative. Half of what is lacking. Worked: short=3 in -> 1 1/2 in.
    Geometry, no source.
    """
    not_negative(short=short)
    return short / 2


@formula(
    "fitting.gusset_length",
    words="2 x square root of ({side} squared - ({width} / 2) squared)",
    source="common-practice",
    gives="mm",
)
def gusset_length(side: Mm, width: Mm) -> Mm:
    """From point to point of a diamond gusset through the inseams, to 1/1000 mm.

    Millimeters. Its sides are as long as the inseam is opened, its middle as wide as the trunk is to gain.
    FigureError if the width is negative or not less than two sides. Right triangle of half the width and a
    side. Worked: side=50 mm, width=60 mm -> 80 mm. Geometry, no source.
    """
    positive(side=side)
    not_negative(width=width)
    need(width < 2 * side, "the gusset is wider than its sides reach", "open the inseams further")
    return 2 * root(side**2 - (width / 2) ** 2)
