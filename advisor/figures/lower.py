"""What deepens the crotch of trousers: a gusset, seams let out at its points."""

from advisor.figures.exact import not_negative
from advisor.figures.formula import Mm, formula


@formula("lower.gusset_width", words="2 x {deeper}", source="common-practice", gives="mm")
def gusset_width(deeper: Mm) -> Mm:
    """Width of a gusset that lets a crotch hang `deeper`: it goes into the seam from front to back, half each.

    Millimeters. FigureError if negative. Twice the depth. Worked: deeper=1 in -> 2 in. Geometry, no source.
    """
    not_negative(deeper=deeper)
    return 2 * deeper


@formula("lower.points_give", words="the larger of (0, {allowance} - {keep})", source="common-practice", gives="mm")
def points_give(allowance: Mm, keep: Mm) -> Mm:
    """How much deeper a crotch hangs when both inner seams are let out at it as far as they hold.

    Millimeters; `allowance` is the least on one side. Front and back point each move out by what the allowance has
    beyond what must stay; the two together lengthen front and back by that, half each counted down.
    FigureError if one is negative. Worked: allowance=3/4 in, keep=3/8 in -> 3/8 in. Geometry, no source.
    """
    not_negative(allowance=allowance, keep=keep)
    return max(allowance - keep, allowance * 0)
