"""Letting out: what seam allowances hold, what must stay in them, what is still wanting."""

from advisor.figures.exact import need, not_negative, positive
from advisor.figures.formula import Count, Mm, formula
from advisor.figures.tables import Table, inch_row

KEEP = Table(
    "allowance to keep",
    "seam allowance that stays beyond the new stitching",
    "mm",
    {
        "trouser center back": (
            inch_row("3/8", "3/8", "SCL"),
            inch_row("1/2", "1/2", "SUITPANTS"),
        ),
        "strained": (
            inch_row("3/8", "1/2", "common-practice", "seat, crotch, armhole; finished and stitched twice"),
        ),
        "loose cloth": (inch_row("3/8", "1/2", "common-practice", "tweed, satin, linen, loose rayon"),),
        "close cloth": (inch_row("1/4", None, "common-practice", "close woven, no strain on the seam"),),
    },
)

LET_OUT_LIMIT = Table(
    "let-out limit",
    "the most a waist is let out, all round",
    "mm",
    {
        "jeans": (inch_row("1/2", "1", "NINEL", "1 in at most"),),
        "suit trousers": (inch_row(None, "3", "SUITPANTS", "if cloth allows"),),
        "womens trousers": (inch_row(None, "0", "SWW", "usually hold no outlet"),),
    },
)


@formula("letout.new_line", words="{total} / 2", source="SCL", gives="mm")
def new_line(total: Mm) -> Mm:
    """How far outside the old line the new one is drawn, on each side of a seam let out by `total`.

    Millimeters. FigureError if the total is negative. Half the total.
    Worked: total=2 in -> 1 in. Source SCL.
    """
    not_negative(total=total)
    return total / 2


@formula("letout.holds", words="2 x ({allowance} - {keep}) x {seams}", source="SCL", gives="mm")
def holds(allowance: Mm, keep: Mm, seams: Count) -> Mm:
    """The most that `seams` seams of equal allowance let out, keeping `keep` beyond the new stitching.

    Millimeters; `allowance` is the least of several places along one side of the seam. 0 if it holds no
    more than must stay. FigureError if one is negative or there is no seam. Each seam has two sides.
    Worked: allowance=1 1/2 in, keep=3/8 in, seams=1 -> 9/4 in. Source SCL.
    """
    not_negative(allowance=allowance, keep=keep)
    positive(seams=seams)
    return max(2 * (allowance - keep) * seams, allowance * 0)


@formula("letout.left_over", words="{allowance} - {total} / (2 x {seams})", source="SCL", gives="mm")
def left_over(allowance: Mm, total: Mm, seams: Count) -> Mm:
    """What stays of each allowance after `total` is let out over equal seams.

    Millimeters. FigureError if the seams do not hold it. Allowance less a side's part.
    Worked: allowance=1 1/2 in, total=2 in, seams=1 -> 1/2 in. Source SCL.
    """
    not_negative(allowance=allowance, total=total)
    positive(seams=seams)
    left = allowance - total / (2 * seams)
    need(left >= 0, "the seams do not hold so much", "let out what they hold and set in a strip for the rest")
    return left


@formula(
    "letout.wanting", words="the larger of (0, {wanted} - {available})", source="common-practice", gives="mm"
)
def wanting(wanted: Mm, available: Mm) -> Mm:
    """What is still wanting when the seams have given all: an inset, a gusset, a band.

    Millimeters, 0 if nothing. FigureError if one is negative. Wanted less available.
    Worked: wanted=3 in, available=2 1/4 in -> 3/4 in. Common practice, no source.
    """
    not_negative(wanted=wanted, available=available)
    return max(wanted - available, wanted * 0)


@formula(
    "letout.inset_cut", words="{wanting} / {insets} + 2 x {allowance}", source="MYTUTOR", gives="mm"
)
def inset_cut(wanting: Mm, insets: Count, allowance: Mm) -> Mm:
    """Width to cut each of `insets` equal strips that make up what is wanting.

    Millimeters; the garment's own edges must still hold an allowance too. FigureError if an amount is
    negative or there is no strip. Part + two allowances.
    Worked: wanting=2 in, insets=2, allowance=1/2 in -> 2 in. Source MYTUTOR (1 in more for two 1/2 in seams).
    """
    not_negative(wanting=wanting, allowance=allowance)
    positive(insets=insets)
    return wanting / insets + 2 * allowance
