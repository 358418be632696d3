"""What a template consists of: lines of a few kinds and words, in millimeters, y upward from the lower left."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from advisor.core.model import Mm

Style = Literal["cut", "stitch", "fold", "guide"]
Point = tuple[Mm, Mm]

MARGIN = Fraction(3)
"""Cloth or paper left round a shape, so that its lines do not lie on the edge of the drawing, mm."""


@dataclass(frozen=True)
class Line:
    """A run of straight pieces through `points`. cut: whole; stitch: dashed; fold: dash and dot; guide: thin."""

    points: tuple[Point, ...]
    style: Style


@dataclass(frozen=True)
class Words:
    """Words that begin at a point."""

    at: Point
    text: str


@dataclass(frozen=True)
class Drawing:
    """A template: `title` over it, `tells` under that; `width` by `height` mm."""

    title: str
    tells: str
    width: Mm
    height: Mm
    lines: tuple[Line, ...]
    words: tuple[Words, ...] = ()


def line(style: Style, *points: Point) -> Line:
    """A line through points."""
    return Line(points, style)


def ring(style: Style, *points: Point) -> Line:
    """A line that ends where it began."""
    return Line((*points, points[0]), style)


def framed(
    title: str, tells: str, lines: Sequence[Line], words: Sequence[Words] = (), beside: Mm = Fraction(0)
) -> Drawing:
    """A drawing just large enough for its lines and a margin; its lower left corner becomes the origin.

    beside: room kept on the right for words, mm.
    """
    xs = [x for each in lines for x, _ in each.points]
    ys = [y for each in lines for _, y in each.points]
    left, low = min(xs) - MARGIN, min(ys) - MARGIN
    return Drawing(
        title,
        tells,
        max(xs) + MARGIN + beside - left,
        max(ys) + MARGIN - low,
        tuple(Line(tuple((x - left, y - low) for x, y in each.points), each.style) for each in lines),
        tuple(Words((each.at[0] - left, each.at[1] - low), each.text) for each in words),
    )
