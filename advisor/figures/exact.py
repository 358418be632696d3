"""Inches, roots and circles kept exact, and the plain refusals the formulas share."""

import math
from collections.abc import Mapping
from fractions import Fraction
from typing import TypeVar

from advisor.errors import nearest
from advisor.figures.formula import FigureError

INCH = Fraction(127, 5)
"""Millimeters in an inch, exact by definition of the inch."""

PI = Fraction(314159265358979323846264338327950288, 10**35)
"""Pi to 35 decimals: far below the thousandth of a millimeter anything is rounded to."""

STEP = Fraction(1, 1000)
"""What a root or a circle is rounded to, in the unit it is in, once, where it leaves."""

T = TypeVar("T")


def inches(text: str | int) -> Fraction:
    """Millimeters of inches written as on a tape: "1/2", "1 1/2", 2."""
    return sum((Fraction(part) for part in str(text).split()), Fraction(0)) * INCH


def rounded(value: Fraction) -> Fraction:
    """`value` to the nearest STEP."""
    return Fraction(round(value / STEP)) * STEP


def root(value: Fraction) -> Fraction:
    """Square root of `value` to the nearest STEP, by whole numbers, so that no float is met."""
    doubled = math.isqrt(math.floor(4 * value / STEP**2))
    return Fraction((doubled + 1) // 2) * STEP


def turned_degrees(tangent: Fraction, times: int = 1) -> Fraction:
    """`times` the angle whose tangent is given, in degrees, to the nearest STEP."""
    return rounded(Fraction(times * math.degrees(math.atan(tangent))))


def need(holds: bool, what: str, hint: str = "") -> None:
    """Refuse with `what` is wrong unless it `holds`."""
    if not holds:
        raise FigureError(what, hint=hint)


def positive(**measures: Fraction | int) -> None:
    """Refuse any that is not more than nothing, by its name."""
    for name, value in measures.items():
        need(value > 0, f"{_said(name)} must be more than 0", f"measure the {_said(name)} again")


def not_negative(**measures: Fraction | int) -> None:
    """Refuse any that is less than nothing, by its name."""
    for name, value in measures.items():
        need(value >= 0, f"{_said(name)} cannot be less than 0", f"measure the {_said(name)} again")


def share_of_one(**shares: Fraction) -> None:
    """Refuse any share outside 0 (included) to 1 (not included)."""
    for name, value in shares.items():
        need(
            0 <= value < 1, f"{_said(name)} must be a share from 0 up to, but not, 1", "15 percent is 15/100"
        )


def pick(word: str, table: Mapping[str, T], what: str) -> T:
    """The entry of `table` under `word`; FigureError names the nearest known word."""
    if word not in table:
        raise FigureError(f"no {what} called '{word}'", hint=nearest(word, table))
    return table[word]


def _said(name: str) -> str:
    return name.replace("_", " ")
