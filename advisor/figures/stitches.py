"""Thread, stitches, needles: how much thread a seam uses, stitch length, needle and thread numbers.

Stitch classes are those of ISO 4915: 101 single chain, 103 blind, 301 lockstitch, 304 zigzag,
401 double chain.
"""

from fractions import Fraction

from advisor.figures.exact import INCH, need, not_negative, positive, share_of_one
from advisor.figures.formula import Count, Lb, LbPerInch, Mm, Number, PerInch, Ratio, formula
from advisor.figures.tables import Row, Table


def _is(value: str, source: str, says: str = "") -> Row:
    return Row(Fraction(value), Fraction(value), source, says)


def _from(least: int, most: int, source: str, says: str = "") -> Row:
    return Row(Fraction(least), Fraction(most), source, says)


THREAD_RATIO = Table(
    "thread ratio",
    "thread used over seam length, by stitch class",
    "ratio",
    {
        "101": (_is("5", "COATS-ST"),),
        "103": (_is("4.5", "COATS-ST"),),
        "301": (_is("2.5", "COATS-ST", "half needle, half bobbin"),),
        "304": (_is("5.5", "COATS-ST"),),
        "401": (_is("5.4", "COATS-METH", "measured"), _is("5", "AE-CONS")),
    },
)

WASTE = Table(
    "thread waste",
    "share added to the thread a seam uses",
    "ratio",
    {
        "factory": (
            Row(Fraction(10, 100), Fraction(15, 100), "COATS-METH"),
            Row(Fraction(15, 100), Fraction(20, 100), "AE-CONS"),
        ),
        "home": (_is("0.05", "OCS-TH"),),
    },
)

STITCHES_PER_INCH = Table(
    "stitches per inch",
    "stitches to the inch, usual for the garment",
    "per_inch",
    {
        "denim": (_from(7, 8, "SPI-TAB", "jeans, jackets, skirts"), _from(7, 9, "OFFSHORE")),
        "twill trousers": (_from(8, 10, "SPI-TAB", "or shorts"),),
        "childrens wear": (_from(8, 10, "SPI-TAB"),),
        "dress trousers": (_from(10, 12, "SPI-TAB"),),
        "dress or skirt": (_from(10, 12, "SPI-TAB"),),
        "dress shirt": (_from(14, 20, "SPI-TAB", "or blouse"),),
        "casual shirt": (_from(10, 14, "SPI-TAB", "blouse, top"),),
        "t-shirt": (_from(10, 12, "SPI-TAB", "or polo shirt"),),
        "swimwear": (_from(12, 16, "SPI-TAB"),),
        "blindstitch hem": (_from(3, 5, "SPI-TAB"),),
        "home, regular": (_from(10, 12, "SPI-CASEY"),),
        "home, fine": (_from(12, 15, "SPI-CASEY"),),
        "home, heavy": (_from(8, 10, "SPI-CASEY"),),
        "home, basting": (_from(6, 6, "SPI-CASEY"),),
        "home, reinforcement": (_from(15, 20, "SPI-CASEY"),),
    },
)


@formula("stitches.thread", words="{seam} x {ratio}", source="COATS-ST", gives="mm")
def thread(seam: Mm, ratio: Ratio) -> Mm:
    """Thread a seam uses, all threads of the stitch together, without waste.

    Millimeters; ratio from THREAD_RATIO. FigureError if one is not more than 0. Seam x ratio.
    Worked: seam=2200 mm, ratio=5/2 -> 5500 mm. Source COATS-ST.
    """
    positive(seam=seam, ratio=ratio)
    return seam * ratio


@formula("stitches.thread_part", words="{total} x {share}", source="COATS-ST", gives="mm")
def thread_part(total: Mm, share: Ratio) -> Mm:
    """One thread's part of the total: needle, bobbin or looper.

    Millimeters; a lockstitch shares half and half, 401 about a quarter to the needle. FigureError if the
    total is negative or the share outside 0 to 1.
    Total x share. Worked: total=5500 mm, share=1/2 -> 2750 mm. Source COATS-ST.
    """
    not_negative(total=total, share=share)
    need(share <= 1, "a part cannot be more than the whole")
    return total * share


@formula("stitches.thread_by_sample", words="{seam} x {drawn} / {sample}", source="AE-CONS", gives="mm")
def thread_by_sample(seam: Mm, drawn: Mm, sample: Mm) -> Mm:
    """Thread for a seam, from the thread drawn out of a measured sample of it.

    Millimeters. FigureError if one is not more than 0. Seam x drawn / sample.
    Worked: seam=42 in, drawn=9 in, sample=3 in -> 126 in. Source AE-CONS.
    """
    positive(seam=seam, drawn=drawn, sample=sample)
    return seam * drawn / sample


@formula("stitches.with_waste", words="{thread} x (1 + {waste})", source="AE-CONS", gives="mm")
def with_waste(thread: Mm, waste: Ratio) -> Mm:
    """Thread to have at hand: what the seams use and what ends and breaks cost.

    Millimeters; waste from WASTE, where sources differ. FigureError if the thread is negative or the
    share not from 0 to 1. Thread x (1 + waste). Worked: thread=100 mm, waste=15/100 -> 115 mm.
    Source AE-CONS.
    """
    not_negative(thread=thread)
    share_of_one(waste=waste)
    return thread * (1 + waste)


@formula(
    "stitches.ratio_301",
    words="2 + 2 x {thickness} x {per_inch} / 25.4 mm",
    source="TEXCALC-TH",
    gives="ratio",
)
def ratio_301(thickness: Mm, per_inch: PerInch) -> Ratio:
    """Thread over seam for a lockstitch, from the thickness of all layers and the stitches to the inch.

    A ratio. FigureError if one is not more than 0. 2 + 2 t s, t in inches.
    Worked: thickness=1/16 in, per_inch=8 -> 3. Source TEXCALC-TH.
    """
    return 2 + _through(thickness, per_inch)


@formula(
    "stitches.ratio_101",
    words="3 + 2 x {thickness} x {per_inch} / 25.4 mm",
    source="TEXCALC-TH",
    gives="ratio",
)
def ratio_101(thickness: Mm, per_inch: PerInch) -> Ratio:
    """Thread over seam for a single chainstitch.

    A ratio. FigureError if one is not more than 0. 3 + 2 t s, t in inches.
    Worked: thickness=1/16 in, per_inch=8 -> 4. Source TEXCALC-TH.
    """
    return 3 + _through(thickness, per_inch)


@formula(
    "stitches.ratio_401", words="4 + 2 x {thickness} x {per_inch} / 25.4 mm", source="AE-CONS", gives="ratio"
)
def ratio_401(thickness: Mm, per_inch: PerInch) -> Ratio:
    """Thread over seam for a double chainstitch.

    A ratio. FigureError if one is not more than 0. 4 + 2 t s, t in inches.
    Worked: thickness=1/16 in, per_inch=8 -> 5. Source AE-CONS.
    """
    return 4 + _through(thickness, per_inch)


def _through(thickness: Mm, per_inch: PerInch) -> Fraction:
    positive(thickness=thickness, stitches_per_inch=per_inch)
    return 2 * thickness * per_inch / INCH


@formula("stitches.mm_per_stitch", words="25.4 mm / {per_inch}", source="SPI-VEN", gives="mm")
def mm_per_stitch(per_inch: PerInch) -> Mm:
    """Stitch length for so many stitches to the inch: the number on a metric dial.

    Millimeters. FigureError if not more than 0. 25.4 / stitches per inch.
    Worked: per_inch=10 -> 2.54 mm. Source SPI-VEN.
    """
    positive(stitches_per_inch=per_inch)
    return INCH / per_inch


@formula("stitches.per_inch", words="25.4 mm / {stitch}", source="SPI-VEN", gives="per_inch")
def per_inch(stitch: Mm) -> PerInch:
    """Stitches to the inch of a stitch length.

    Per inch. FigureError if not more than 0. 25.4 / stitch length.
    Worked: stitch=2.5 mm -> 10.16. Source SPI-VEN.
    """
    positive(stitch_length=stitch)
    return INCH / stitch


@formula("stitches.strength_301", words="{per_inch} x {thread} x 3 / 2", source="AE-SPI", gives="lb_per_inch")
def strength_301(per_inch: PerInch, thread: Lb) -> LbPerInch:
    """Estimated strength of a plain lockstitched seam in woven cloth; the cloth may give way before it.

    Pounds to the inch; `thread` is the breaking strength of a single end in pounds. FigureError if one
    is not more than 0. Stitches x thread x 1.5. Worked: per_inch=10, thread=4 -> 60. Source AE-SPI.
    """
    positive(stitches_per_inch=per_inch, thread_strength=thread)
    return per_inch * thread * 3 / 2


@formula("stitches.needle_metric", words="60 + 5 x ({american} - 8)", source="APSCI-NDL", gives="count")
def needle_metric(american: Count) -> Count:
    """Metric number of a needle from its American one, 12 -> 80.

    A count (Nm). FigureError outside 8 to 18, where the rule does not hold; 11, 13, 15, 17 are in-between
    sizes seldom sold. 60 + 5 x (number - 8). Worked: american=14 -> 90. Source APSCI-NDL.
    """
    need(8 <= american <= 18, "the rule for needle numbers holds from 8 to 18")
    return 60 + 5 * (american - 8)


@formula("stitches.needle_blade", words="{metric} / 100", source="APSCI-NDL", gives="mm")
def needle_blade(metric: Count) -> Mm:
    """Blade diameter of a needle.

    Millimeters. FigureError if the number is not more than 0. Number over 100.
    Worked: metric=90 -> 0.9 mm. Source APSCI-NDL.
    """
    positive(needle_number=metric)
    return Fraction(metric, 100)


@formula("stitches.ticket_metric", words="3000 / {tex}", source="COATS-05", gives="number")
def ticket_metric(tex: Number) -> Number:
    """Metric ticket of a thread: Tex rises with coarseness, the ticket falls.

    A number. FigureError if not more than 0. 3000 over Tex.
    Worked: tex=40 -> 75. Source COATS-05, and TKT1.
    """
    positive(tex=tex)
    return 3000 / tex


@formula("stitches.ticket_of_count", words="3 x {count} / {plies}", source="TKT2", gives="number")
def ticket_of_count(count: Number, plies: Count) -> Number:
    """Ticket of a plied thread: metric from Nm, cotton from Ne, as the count was given.

    A number. FigureError if one is not more than 0. 3 x count / plies.
    Worked: count=80, plies=2 -> 120. Source TKT2.
    """
    positive(count=count, plies=plies)
    return 3 * count / plies
