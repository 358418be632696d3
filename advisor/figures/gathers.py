"""Gathers and ease: how full, over which zone, what a cloth takes without puckers, where rows lie.

Fullness is judged in the zone that is gathered, not over the whole quarter: a quarter of 11 into 9
is 1.22, but 1.5 where all of it sits in a zone of 4.
"""

from fractions import Fraction

from advisor.figures.exact import INCH, inches, need, not_negative, pick, positive
from advisor.figures.formula import Count, Mm, PerInch, Ratio, Word, formula
from advisor.figures.tables import Row, Table

GATHERS_FROM = Fraction(13, 10)
"""Fullness from which gathers look meant: common practice, no source."""
EASE_UP_TO = Fraction(11, 10)
"""Up to here it is called ease, if the cloth takes it: common practice, no source."""

TAKE_UP = Table(
    "take-up",
    "share of the shorter edge that eases in without puckers",
    "ratio",
    {
        "soft wool": (Row(Fraction(8, 100), Fraction(10, 100), "from-memory"),),
        "cotton": (Row(Fraction(4, 100), Fraction(5, 100), "from-memory"),),
        "close": (
            Row(Fraction(2, 100), Fraction(3, 100), "from-memory", "close polyester, microfiber, poplin"),
        ),
        "coated": (Row(Fraction(0), Fraction(1, 100), "from-memory", "leather and coated cloth"),),
    },
)

FULLNESS = Table(
    "fullness",
    "gathered edge over finished edge, usual for the weight of cloth",
    "ratio",
    {
        "chiffon": (Row(Fraction(3), Fraction(3), "NEWDRESS-RU"),),
        "taffeta": (Row(Fraction(2), Fraction(2), "NEWDRESS-RU", "only about twice"),),
        "sheer": (Row(Fraction(3), Fraction(4), "PUNTADAS"),),
        "medium": (
            Row(Fraction(2), Fraction(2), "PUNTADAS"),
            Row(Fraction(3, 2), Fraction(3), "STITCHC", "any ruffle"),
        ),
        "heavy": (Row(Fraction(3, 2), Fraction(3, 2), "PUNTADAS"),),
    },
)

ROW_APART = inches("1/4")
"""From the row on the seam line to the next, inside the allowance. Source SKUOLA-GATH (6 mm)."""


@formula("gathers.ratio", words="{long} / {short}", source="common-practice", gives="ratio")
def ratio(long: Mm, short: Mm) -> Ratio:
    """Longer edge over shorter, both of one quarter or both of the whole round.

    A ratio, 1 or more. FigureError if the short edge is not more than 0, or is the longer one.
    Long over short. Worked: long=11 in, short=9 in -> 11/9. Common practice, no source.
    """
    positive(short=short)
    need(long >= short, "the edge called long is the shorter one", "exchange the two")
    return long / short


@formula("gathers.quarter", words="{round} / 4", source="common-practice", gives="mm")
def quarter(round: Mm) -> Mm:
    """One quarter of a round edge: center front to side, side to center back.

    Millimeters. FigureError if the round is not more than 0. A fourth.
    Worked: round=36 in -> 9 in. Common practice, no source.
    """
    positive(round=round)
    return round / 4


@formula(
    "gathers.zone_fullness", words="({zone} + {excess}) / {zone}", source="common-practice", gives="ratio"
)
def zone_fullness(excess: Mm, zone: Mm) -> Ratio:
    """Fullness where the gathers are, `excess` drawn up into a finished `zone`.

    A ratio, 1 or more. FigureError if the excess is negative or the zone not more than 0.
    (Zone + excess) over zone. Worked: excess=2 in, zone=4 in -> 3/2. Geometry, no source.
    """
    not_negative(excess=excess)
    positive(zone=zone)
    return (zone + excess) / zone


@formula("gathers.zone_for", words="{excess} / ({fullness} - 1)", source="common-practice", gives="mm")
def zone_for(excess: Mm, fullness: Ratio) -> Mm:
    """The finished zone over which `excess` has just that fullness; a shorter one is fuller.

    Millimeters. FigureError if the excess is negative or the fullness not more than 1.
    Excess over (fullness - 1). Worked: excess=2 in, fullness=3/2 -> 4 in. Geometry, no source.
    """
    not_negative(excess=excess)
    need(fullness > 1, "the fullness must be more than 1")
    return excess / (fullness - 1)


@formula("gathers.cloth_for", words="{finished} x {fullness}", source="CRAFTSY", gives="mm")
def cloth_for(finished: Mm, fullness: Ratio) -> Mm:
    """Length to cut for a gathered piece, before its end hems or seams.

    Millimeters. FigureError if the finished length is not more than 0 or the fullness less than 1.
    Finished times fullness. Worked: finished=36 in, fullness=2 -> 72 in. Source CRAFTSY.
    """
    positive(finished=finished)
    need(fullness >= 1, "the fullness cannot be less than 1")
    return finished * fullness


@formula("gathers.excess", words="{long} - {short}", source="common-practice", gives="mm")
def excess(long: Mm, short: Mm) -> Mm:
    """What must be gathered, eased, pleated or taken out of the long edge.

    Millimeters. FigureError if the edge called long is the shorter one.
    Long less short. Worked: long=11 in, short=9 in -> 2 in. Common practice, no source.
    """
    positive(short=short)
    need(long >= short, "the edge called long is the shorter one", "exchange the two")
    return long - short


@formula(
    "gathers.ease_sure",
    words="{edge} x the least that {cloth} cloth takes up",
    source="from-memory",
    gives="mm",
)
def ease_sure(edge: Mm, cloth: Word) -> Mm:
    """What surely eases into an edge without puckers.

    Millimeters; cloth is a word of TAKE_UP. FigureError for another word or an edge not more than 0.
    Edge times 8, 4, 2 or 0 percent. Worked: edge=10 in, cloth=cotton -> 2/5 in. From memory.
    """
    positive(edge=edge)
    return edge * _share(cloth, most=False)


@formula(
    "gathers.ease_most",
    words="{edge} x the most that {cloth} cloth takes up",
    source="from-memory",
    gives="mm",
)
def ease_most(edge: Mm, cloth: Word) -> Mm:
    """The most that may ease into an edge without puckers; past it darts, pleats or gathers.

    Millimeters; cloth as for `ease_sure`. FigureError for another word or an edge not more than 0.
    Edge times 10, 5, 3 or 1 percent. Worked: edge=10 in, cloth=cotton -> 1/2 in. From memory.
    """
    positive(edge=edge)
    return edge * _share(cloth, most=True)


def _share(cloth: str, most: bool) -> Fraction:
    pick(cloth, TAKE_UP.rows, "kind of cloth for ease")
    return TAKE_UP.end(cloth, "most" if most else "least")


@formula(
    "gathers.called",
    words="what a fullness of {fullness} is called in {cloth} cloth, usual {usual}",
    source="common-practice",
    gives="word",
)
def called(fullness: Ratio, cloth: Word, usual: Ratio) -> Word:
    """What this fullness is: plain, ease, neither, gathers or too full.

    A word. `cloth` is a word of TAKE_UP, `usual` the fullness usual for its weight. "Ease" up to what
    the cloth takes up and never past 1.1; "gathers" from 1.3 to the usual fullness; between them
    "neither", which looks like a mistake: pleat, dart or take in. FigureError for an unknown cloth or a
    fullness under 1. Worked: fullness=6/5, cloth=cotton, usual=2 -> neither. Common practice, no source.
    """
    need(fullness >= 1, "the fullness cannot be less than 1")
    need(usual >= 1, "the usual fullness cannot be less than 1")
    if fullness == 1:
        return "plain"
    if fullness <= min(1 + _share(cloth, most=True), EASE_UP_TO):
        return "ease"
    if fullness < GATHERS_FROM:
        return "neither"
    return "gathers" if fullness <= usual else "too full"


@formula(
    "gathers.rows_at",
    words="{allowance}, then 1/4 in nearer the raw edge, {rows} rows in all",
    source="SKUOLA-GATH",
    gives="mm",
)
def rows_at(allowance: Mm, rows: Count) -> tuple[Mm, ...]:
    """How far from the raw edge each gathering row lies: one on the seam line, the rest inside.

    Millimeters, the seam line first. FigureError if the allowance has no room for them or there is no
    row; two rows gather evenly. Others lay no row on the line: say which you follow.
    Worked: allowance=1/2 in, rows=2 -> [1/2 in; 1/4 in]. Source SKUOLA-GATH.
    """
    positive(allowance=allowance, rows=rows)
    need(
        allowance > ROW_APART * (rows - 1),
        "the seam allowance has no room for so many rows",
        "two rows are enough",
    )
    return tuple(allowance - ROW_APART * row for row in range(rows))


@formula("gathers.stitch_length", words="25.4 mm / {per_inch}", source="SEWNEWS", gives="mm")
def stitch_length(per_inch: PerInch) -> Mm:
    """Stitch length on a dial in millimeters for so many gathering stitches to the inch.

    Millimeters; about 6 to the inch for medium cloth, 10-12 for light. FigureError if not more than 0.
    25.4 over stitches per inch. Worked: per_inch=6 -> 127/30 mm. Source SEWNEWS (6 to the inch, 4 mm).
    """
    positive(stitches_per_inch=per_inch)
    return INCH / per_inch
