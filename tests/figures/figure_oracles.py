"""How a formula is held against something that reaches its number another way.

An oracle builds the cloth (shapely), counts it, solves it backwards or takes the road through decimal
inches (pint); it never repeats the formula in fractions. Oracles register here by formula id.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import pint
from shapely import LineString, Polygon

from advisor.figures import Formula, inches

UNITS: pint.UnitRegistry[float] = pint.UnitRegistry()
DRAWN = 1e-6
"""Millimeters: what a drawing in floats may be out."""
ROUNDED = 0.000501
"""Millimeters: a formula rounded to 1/1000, and the drawing's own error."""


class Draw:
    """Inputs at random, the same ones in every run."""

    def __init__(self, seed: str) -> None:
        self.rng = random.Random(seed)

    def inch(self, least: str | int, most: str | int) -> Fraction:
        """A tape mark (1/16 in) from least to most inches, in mm."""
        sixteenths = inches("1/16")
        low, high = (int(inches(end) / sixteenths) for end in (least, most))
        return self.rng.randint(low, high) * sixteenths

    def whole(self, least: int, most: int) -> int:
        return self.rng.randint(least, most)

    def share(self, least: str, most: str) -> Fraction:
        """A fraction from least to most in hundredths."""
        low, high = int(Fraction(least) * 100), int(Fraction(most) * 100)
        return Fraction(self.rng.randint(low, high), 100)

    def one_of(self, *words: str) -> str:
        return self.rng.choice(words)


@dataclass(frozen=True)
class Oracle:
    formula: Formula[..., Any]
    draw: Callable[[Draw], dict[str, Any]]
    answer: Callable[..., Any]
    within: float


ORACLES: list[Oracle] = []


def oracle(
    formula: Formula[..., Any], draw: Callable[[Draw], dict[str, Any]], within: float = DRAWN
) -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """Register a function of the formula's inputs (as floats, words and counts) as its oracle."""

    def keep(answer: Callable[..., Any]) -> Callable[..., Any]:
        ORACLES.append(Oracle(formula, draw, answer, within))
        return answer

    return keep


def path(*steps: tuple[float, float]) -> LineString:
    """Cloth seen from its edge: a line walked from the origin by steps (along, up)."""
    x = y = 0.0
    points = [(x, y)]
    for along, up in steps:
        x, y = x + along, y + up
        points.append((x, y))
    return LineString(points)


def span(line: LineString) -> float:
    """Room a walked line takes along."""
    return float(line.bounds[2] - line.bounds[0])


def strip(start: float, end: float) -> LineString:
    """A stretch of an edge."""
    return LineString([(start, 0), (end, 0)])


def wedge(intake: float, length: float) -> Polygon:
    """What a dart or a seam running out takes: open edge at y = 0, point at y = -length."""
    return Polygon([(-intake / 2, 0), (intake / 2, 0), (0, -length)])


def across(y: float, half: float = 1e5) -> LineString:
    """A level line at y."""
    return LineString([(-half, y), (half, y)])


def solve(rises: Callable[[float], float], target: float, low: float = 0.0, high: float = 1e5) -> float:
    """The input at which a rising function reaches the target, by halving."""
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if rises(middle) < target else (low, middle)
    return (low + high) / 2


def decimal_inches(mm: float) -> float:
    """A length by another road: pint, in decimal inches."""
    return float((mm * UNITS.mm).to(UNITS.inch).magnitude)


def from_inches(length: float) -> float:
    """Decimal inches back to mm, by pint."""
    return float((length * UNITS.inch).to(UNITS.mm).magnitude)
