"""Raising a waist: where to cut, what the trunk loop and the opening lose, what ease is left.

The trunk loop runs from one shoulder down the front, between the legs and up the back. A waist
raised by n takes n off the front and n off the back of it.
"""

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Mm, formula
from advisor.figures.tables import Table, inch_row

DOMESTIC_ALLOWANCE = inches("1/2")
"""Seam allowance at a waist on domestic work: common practice, no source."""
SIDES_WITHIN = inches("1/4")
"""Left and right within this are averaged; past it each side is fitted: common practice, no source."""

TRUNK_EASE = Table(
    "trunk ease",
    "garment loop less body loop, in cloth that does not stretch",
    "mm",
    {
        "standing": (inch_row("1 1/2", "2", "common-practice", "for still standing only"),),
        "work": (inch_row("3", "4", "from-memory", "to bend and sit in"),),
    },
)


@formula("trunk.cut_line", words="{mark} + {allowance}", source="common-practice", gives="mm")
def cut_line(mark: Mm, allowance: Mm) -> Mm:
    """Where to cut when a seam moves to `mark`: past it, away from the part that is kept.

    Millimeters from the shoulder for a bodice kept above the mark. FigureError if the mark is not more
    than 0 or the allowance negative. Mark + allowance. Worked: mark=15 in, allowance=1/2 in -> 15 1/2 in.
    Common practice, no source; 1/2 in on domestic work.
    """
    positive(mark=mark)
    not_negative(allowance=allowance)
    return mark + allowance


@formula(
    "trunk.strip_cut_off",
    words="{raised} + {old_allowance} - {allowance}",
    source="common-practice",
    gives="mm",
)
def strip_cut_off(raised: Mm, old_allowance: Mm, allowance: Mm) -> Mm:
    """Depth of the strip that falls away, from the opened raw edge, when a waist is raised.

    Millimeters. FigureError if a part is negative or the new allowance finds no cloth.
    Raised + old allowance - new allowance.
    Worked: raised=1 1/2 in, old_allowance=5/8 in, allowance=1/2 in -> 13/8 in. Common practice, no source.
    """
    not_negative(raised=raised, old_allowance=old_allowance, allowance=allowance)
    strip = raised + old_allowance - allowance
    need(strip >= 0, "the new seam allowance finds no cloth", "take a narrower allowance")
    return strip


@formula("trunk.loop_loss", words="2 x {raised}", source="common-practice", gives="mm")
def loop_loss(raised: Mm) -> Mm:
    """What the trunk loop loses when the waist is raised all round: front and back.

    Millimeters. FigureError if negative. Twice the raise.
    Worked: raised=1 1/2 in -> 3 in. Geometry, no source.
    """
    not_negative(raised=raised)
    return 2 * raised


@formula(
    "trunk.ease_left",
    words="{garment_loop} - 2 x {raised} - {body_loop}",
    source="common-practice",
    gives="mm",
)
def ease_left(garment_loop: Mm, raised: Mm, body_loop: Mm) -> Mm:
    """Ease the trunk loop has after the raise; below 0 it cannot be closed standing.

    Millimeters, may be negative; to be held against TRUNK_EASE. FigureError if a loop is not more than
    0 or the raise negative. Garment loop - 2 x raise - body loop.
    Worked: garment_loop=66 in, raised=1 1/2 in, body_loop=61 in -> 2 in. Geometry, no source.
    """
    positive(garment_loop=garment_loop, body_loop=body_loop)
    not_negative(raised=raised)
    return garment_loop - 2 * raised - body_loop


@formula(
    "trunk.most_raise",
    words="({garment_loop} - {body_loop} - {ease}) / 2",
    source="common-practice",
    gives="mm",
)
def most_raise(garment_loop: Mm, body_loop: Mm, ease: Mm) -> Mm:
    """The most a waist may be raised and leave `ease` in the trunk loop.

    Millimeters. FigureError if the loop lacks that ease already. Half of what is to spare.
    Worked: garment_loop=66 in, body_loop=61 in, ease=3 in -> 1 in. Geometry, no source.
    """
    positive(garment_loop=garment_loop, body_loop=body_loop)
    not_negative(ease=ease)
    spare = garment_loop - body_loop - ease
    need(
        spare >= 0,
        "the trunk has no ease to give",
        "lengthen it with a yoke or a band before raising the waist",
    )
    return spare / 2


@formula("trunk.opening_left", words="{opening} - {raised}", source="common-practice", gives="mm")
def opening_left(opening: Mm, raised: Mm) -> Mm:
    """Length of a front opening that crosses the waist, after the raise.

    Millimeters; the closure is now too long by the raise. FigureError if nothing would be left.
    Opening less raise. Worked: opening=20 in, raised=1 1/2 in -> 18 1/2 in. Geometry, no source.
    """
    positive(opening=opening)
    not_negative(raised=raised)
    need(
        raised < opening, "nothing of the opening would be left", "raise the waist less, or move the closure"
    )
    return opening - raised


@formula("trunk.level", words="({left} + {right}) / 2", source="common-practice", gives="mm")
def level(left: Mm, right: Mm) -> Mm:
    """One amount for two sides that differ by no more than 1/4 in.

    Millimeters; exactly 1/4 in is still averaged. FigureError past it: the sides are fitted apart.
    The mean. Worked: left=1 1/4 in, right=1 1/2 in -> 11/8 in. Common practice, no source.
    """
    need(
        abs(left - right) <= SIDES_WITHIN,
        "left and right differ by more than 1/4 in",
        "fit each side by itself and say so; the body wins",
    )
    return (left + right) / 2


@formula("trunk.sides_differ", words="the size of ({left} - {right})", source="common-practice", gives="mm")
def sides_differ(left: Mm, right: Mm) -> Mm:
    """By how much left and right differ; past 1/4 in at leg or sleeve, 3/8 in at a shoulder, fit apart.

    Millimeters, 0 or more. The difference without its sign.
    Worked: left=1 in, right=1 1/2 in -> 1/2 in. Common practice, no source.
    """
    return abs(left - right)
