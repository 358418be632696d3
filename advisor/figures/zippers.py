"""Zippers: shortening, stock lengths, the length a front wants.

Length is measured along the teeth between the stops; tape ends do not count.
"""

from fractions import Fraction

from advisor.figures.exact import INCH, inches, need, not_negative, positive, share_of_one
from advisor.figures.formula import Mm, Ratio, formula

STOP_ALLOWANCE = inches("3/16")
"""What a whipstitched stop takes up on a coil zipper. Source WZIP."""
TAIL = inches("3/4")
"""Tape left below a new bottom stop. Source WZIP; LMD leaves 1 in."""
TOP_TAPE = inches("1 1/4")
"""Tape kept above a new top stop. Source IRONF."""
STOCK_INCHES = (4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 20, 21, 22, 24, 26, 27, 28, 30)
"""Stock lengths of one trade list. Source UKSEW."""
STOCK = tuple(length * INCH for length in STOCK_INCHES)


@formula("zippers.shorten_by", words="{zipper} - {opening}", source="common-practice", gives="mm")
def shorten_by(zipper: Mm, opening: Mm) -> Mm:
    """How much a zipper must lose to fit its opening.

    Millimeters. FigureError if it is shorter than the opening already: a zipper is never lengthened.
    Zipper less opening. Worked: zipper=16 in, opening=13 in -> 3 in. Common practice, no source.
    """
    positive(zipper=zipper, opening=opening)
    need(
        zipper >= opening, "the zipper is shorter than the opening", "buy the next longer one and shorten it"
    )
    return zipper - opening


@formula("zippers.mark_at", words="{wanted} + 3/16 in", source="WZIP", gives="mm")
def mark_at(wanted: Mm) -> Mm:
    """Where to mark the new bottom stop of a coil zipper, from its top stop.

    Millimeters; the whipstitched stop takes up 3/16 in. Not for separating or metal zippers. FigureError
    if the length is not more than 0. Wanted + 3/16 in. Worked: wanted=13 in -> 211/16 in. Source WZIP.
    """
    positive(wanted=wanted)
    return wanted + STOP_ALLOWANCE


@formula("zippers.cut_at", words="{mark} + {tail}", source="WZIP", gives="mm")
def cut_at(mark: Mm, tail: Mm) -> Mm:
    """Where to cut the tape below the new bottom stop, from the top stop, once the stop is sewn.

    Millimeters; `tail` is 3/4 in by WZIP, 1 in by LMD. FigureError if the mark is not more than 0 or the
    tail negative. Mark + tail. Worked: mark=13 in, tail=3/4 in -> 13 3/4 in. Source WZIP.
    """
    positive(mark=mark)
    not_negative(tail=tail)
    return mark + tail


@formula("zippers.top_cut_at", words="{wanted} + 1 1/4 in", source="IRONF", gives="mm")
def top_cut_at(wanted: Mm) -> Mm:
    """Where to cut the tape of a zipper shortened from the top, from its bottom stop.

    Millimeters; for metal and separating ones. The new top stops are set, and the teeth above them
    drawn, before the cut and before the slider passes. FigureError if the length is not more than 0.
    Wanted + 1 1/4 in of tape. Worked: wanted=20 in -> 21 1/4 in. Source IRONF.
    """
    positive(wanted=wanted)
    return wanted + TOP_TAPE


@formula(
    "zippers.stock_shorter", words="the longest stock zipper not over {opening}", source="UKSEW", gives="mm"
)
def stock_shorter(opening: Mm) -> Mm:
    """Longest stock length that does not pass the opening, which is closed above or below it.

    Millimeters. FigureError if the opening is under 4 in.
    Worked: opening=18 1/2 in -> 18 in. Source UKSEW.
    """
    need(opening >= STOCK[0], "no stock zipper is so short", "shorten one, or close with snaps or hooks")
    return max(length for length in STOCK if length <= opening)


@formula(
    "zippers.stock_longer", words="the shortest stock zipper not under {opening}", source="UKSEW", gives="mm"
)
def stock_longer(opening: Mm) -> Mm:
    """Shortest stock length that fills the opening, to be shortened to it.

    Millimeters. FigureError if the opening is over 30 in, where this list ends.
    Worked: opening=18 1/2 in -> 20 in. Source UKSEW.
    """
    positive(opening=opening)
    need(
        opening <= STOCK[-1],
        "the trade list ends at 30 in",
        "ask for a jacket zipper, or zipper sold by length",
    )
    return min(length for length in STOCK if length >= opening)


@formula("zippers.label_length", words="{length} to the nearest whole centimeter", source="UKSEW", gives="mm")
def label_length(length: Mm) -> Mm:
    """A stock length as printed on its label in whole centimeters.

    Millimeters, a multiple of 10; a half goes up. FigureError if the length is not more than 0.
    Worked: length=7 in -> 180 mm. Source UKSEW.
    """
    positive(length=length)
    return Fraction((length / 10 + Fraction(1, 2)) // 1) * 10


@formula(
    "zippers.for_front",
    words="({body} - {front_drop} - {back_drop}) x (1 - {shorter})",
    source="APPM-ZIP",
    gives="mm",
)
def for_front(body: Mm, front_drop: Mm, back_drop: Mm, shorter: Ratio) -> Mm:
    """Zipper for a full front in factory practice: body length from the high shoulder, less neck drops.

    Millimeters; factories cut it 2-3 percent shorter, at home it equals the stayed edge (`shorter` 0).
    FigureError if the drops leave no front or the share is not from 0 to 1.
    Worked: body=730 mm, front_drop=80 mm, back_drop=20 mm, shorter=2/100 -> 617.4 mm. Source APPM-ZIP.
    """
    positive(body=body)
    not_negative(front_drop=front_drop, back_drop=back_drop)
    share_of_one(shorter=shorter)
    front = body - front_drop - back_drop
    need(front > 0, "the neck drops leave no front")
    return front * (1 - shorter)
