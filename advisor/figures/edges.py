"""Edges that must agree and ends that must reach: gathering zones, what a hem keeps, fastenings in a slit.

The word tables turn what is asked about the cloth into the words of the gathers and darts tables.
"""

from collections.abc import Mapping
from fractions import Fraction

from advisor.figures.darts import most_each
from advisor.figures.exact import inches, not_negative, positive
from advisor.figures.formula import Count, Mm, formula
from advisor.figures.gathers import FULLNESS, TAKE_UP, zone_fullness

LEAST_ZONE = inches("2")
"""A shorter stretch of gathers looks like a pucker: common practice, no source."""
LONGEST_BARE = inches("4")
"""The longest stretch of a slit left without a fastening: common practice, no source."""

TAKE_UP_WORD: Mapping[str, str] = {
    "cotton": "cotton",
    "wool": "soft wool",
    "polyester": "close",
    "silk": "close",
    "coated": "coated",
}
"""The row of the take-up table for each kind of cloth; silk counted with close cloth, from memory."""
DART_WORD: Mapping[str, str] = {
    "cotton": "crisp",
    "wool": "wool",
    "polyester": "crisp",
    "silk": "other",
    "coated": "crisp",
}
"""The row of the darts table for each kind of cloth, from memory."""
FULLNESS_WORD: Mapping[str, str] = {"light": "sheer", "medium": "medium", "heavy": "heavy"}
"""The row of the fullness table for each weight of cloth."""


QUARTERS: Mapping[str, int] = {"round": 4, "back": 2}
"""How many quarters of a waist edge hold its spare width."""


def take_up(kind: str, *, most: bool) -> Fraction:
    """The share of an edge that eases into a shorter one in cloth of `kind`: surely, or at the `most`.

    A kind without a row counts as close cloth, the more cautious.
    """
    return TAKE_UP.end(TAKE_UP_WORD.get(kind, "close"), "most" if most else "least")


def fullest(weight: str) -> Fraction:
    """The fullness that gathers in cloth of `weight` do not go past: the usual one, a ratio."""
    return FULLNESS.end(FULLNESS_WORD.get(weight, "medium"), "least")


def dart_most(kind: str, room: Fraction) -> Fraction:
    """The most one dart takes in cloth of `kind` with `room` to run, mm; 0 without room."""
    return most_each(room, DART_WORD.get(kind, "crisp")) if room > 0 else room * 0


def drawn_fullness(excess: Fraction, spare_at: str, room: Fraction) -> Fraction:
    """How full the gathered stretch of each quarter would be, a ratio; `room` is what one quarter has, mm."""
    part = excess / QUARTERS.get(spare_at, 4)
    return zone_fullness(part, zone(part, room)) if room > 0 else Fraction(1)


@formula(
    "edges.zone",
    words="the smaller of ({room}, the larger of (2 in, 2 x {part}))",
    source="common-practice",
    gives="mm",
)
def zone(part: Mm, room: Mm) -> Mm:
    """The finished stretch over which `part` is drawn up: 1 1/2 times as full where there is room for it.

    Millimeters; not under 2 in, not over the `room`. FigureError if the part is negative or there is no
    room. Over twice its amount anything is 1 1/2 times as full.
    Worked: part=2 in, room=6 in -> 4 in. Common practice, no source.
    """
    not_negative(part=part)
    positive(room=room)
    return min(room, max(LEAST_ZONE, 2 * part))


@formula("edges.hem_kept", words="{old_hem} - {short}", source="common-practice", gives="mm")
def hem_kept(old_hem: Mm, short: Mm) -> Mm:
    """What is left to turn up when an old hem is let down by what the end is short of.

    Millimeters, below 0 where the hem does not hold so much. FigureError if an amount is negative.
    Old hem less what is short. Worked: old_hem=2 in, short=1 1/2 in -> 1/2 in. Common practice, no source.
    """
    not_negative(old_hem=old_hem, short=short)
    return old_hem - short


@formula(
    "edges.fastenings",
    words="the larger of (1, round up ({length} / 4 in) - 1)",
    source="common-practice",
    gives="count",
)
def fastenings(length: Mm) -> Count:
    """How many fastenings a slit of `length` needs so that no stretch between them is over 4 in.

    A count, at least 1. FigureError if the length is not more than 0. Stretches less one.
    Worked: length=9 in -> 2. Common practice, no source.
    """
    positive(length=length)
    return max(1, -(-length // LONGEST_BARE) - 1)
