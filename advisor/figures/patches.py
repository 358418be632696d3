"""Patches and darns: how large, beyond sound cloth and not beyond the hole."""

from advisor.figures.exact import PI, inches, need, not_negative, positive, rounded
from advisor.figures.formula import Mm, Mm2, formula
from advisor.figures.tables import Table, inch_row

MARGIN = Table(
    "patch margin",
    "how far a patch reaches past the hole on every side",
    "mm",
    {
        "wool": (inch_row("3/4", "3/4", "SCHOOLSEW-P"),),
        "plain": (inch_row("3/4", "1", "UMA-PATCH"), inch_row("1/2", "1", "MAKERP"), inch_row("1/2", "1", "TM201-70")),
        "seat or knee": (inch_row("3/4", None, "SCHOOLSEW-P", "further than 3/4 in"),),
        "set in": (inch_row(None, "1/2", "SEWTEACH", "edge to edge, or 1/2 in larger"),),
    },
)
TURN_UNDER = inches("1/4")
"""Turned under all round on a patch. Sources UMA-PATCH and SKUOLA-PATCH (6 mm); TM201-70 turns 3/8 in."""
DARN_BEYOND = inches("1/2")
"""A darn starts and ends so far past the tear. Source SCHOOLSEW-D."""


@formula("patches.finished", words="{hole} + 2 x ({weak} + {margin})", source="TM201-289", gives="mm")
def finished(hole: Mm, weak: Mm, margin: Mm) -> Mm:
    """Finished width or height of a patch over a hole and the weak cloth round it.

    Millimeters; `weak` is how far thin or rusted cloth reaches past the hole on each side, `margin` how
    far the patch goes onto sound cloth. FigureError if one is negative.
    Hole + twice (weak + margin). Worked: hole=1/2 in, weak=1/4 in, margin=3/4 in -> 2 1/2 in.
    Source TM201-289 (3/4 in past the damage in all directions).
    """
    not_negative(hole=hole, weak=weak, margin=margin)
    return hole + 2 * (weak + margin)


@formula("patches.cut", words="{hole} + 2 x ({margin} + {turn_under})", source="UMA-PATCH", gives="mm")
def cut(hole: Mm, margin: Mm, turn_under: Mm) -> Mm:
    """Width or height to cut a patch; `hole` includes the weak cloth round it.

    Millimeters; an ironed or zigzagged patch has no turn under. FigureError if one is negative.
    Hole + twice (margin + turn under).
    Worked: hole=1 in, margin=3/4 in, turn_under=1/4 in -> 3 in. Source UMA-PATCH.
    """
    not_negative(hole=hole, margin=margin, turn_under=turn_under)
    return hole + 2 * (margin + turn_under)


@formula(
    "patches.cloth_area",
    words="{width} x {height} - (4 - pi) x {corner} squared",
    source="common-practice",
    gives="mm2",
)
def cloth_area(width: Mm, height: Mm, corner: Mm) -> Mm2:
    """Area of a patch with corners rounded to a radius, to 1/1000 square millimeter.

    Square millimeters. FigureError if a side is not more than 0 or the corners do not fit.
    Worked: width=100 mm, height=100 mm, corner=10 mm -> 9914.159 mm2. Geometry, no source.
    """
    _fits(width, height, corner)
    return rounded(width * height - (4 - PI) * corner**2)


@formula(
    "patches.edge_length",
    words="2 x ({width} + {height}) - (8 - 2 x pi) x {corner}",
    source="common-practice",
    gives="mm",
)
def edge_length(width: Mm, height: Mm, corner: Mm) -> Mm:
    """Length to stitch round such a patch, to 1/1000 mm: what thread and minutes are reckoned from.

    Millimeters. FigureError as for `cloth_area`.
    Worked: width=100 mm, height=100 mm, corner=10 mm -> 382.832 mm. Geometry, no source.
    """
    _fits(width, height, corner)
    return rounded(2 * (width + height) - (8 - 2 * PI) * corner)


def _fits(width: Mm, height: Mm, corner: Mm) -> None:
    positive(width=width, height=height)
    not_negative(corner=corner)
    need(2 * corner <= min(width, height), "the rounded corners do not fit the patch", "round them less")


@formula("patches.darn_span", words="{tear} + 2 x {beyond}", source="SCHOOLSEW-D", gives="mm")
def darn_span(tear: Mm, beyond: Mm) -> Mm:
    """How far darning stitches run across a tear, begun and ended in sound cloth.

    Millimeters; `tear` is its gap, about 0 for a clean tear. FigureError if one is negative.
    Tear + twice beyond. Worked: tear=0 in, beyond=1/2 in -> 1 in. Source SCHOOLSEW-D.
    """
    not_negative(tear=tear, beyond=beyond)
    return tear + 2 * beyond
