"""Cutting a drawing that is larger than a page into parts that overlap."""

from dataclasses import dataclass
from fractions import Fraction

from advisor.core.model import Mm
from advisor.sheet.drawing import Drawing, Point

OVERLAP = Fraction(10)
"""How much two neighboring parts share, mm: what is glued over each other."""


@dataclass(frozen=True)
class Tile:
    """A part of a drawing: lower left corner and size in the drawing, mm; which part it is of how many."""

    left: Mm
    low: Mm
    width: Mm
    height: Mm
    number: int
    count: int

    def crosses(self, drawing: Drawing) -> list[Point]:
        """Points in the middle of each strip shared with a neighbor; the neighbor's strip has the same ones."""
        thirds = [Fraction(n, 4) for n in (1, 2, 3)]
        ups = [self.low + OVERLAP / 2] if self.low > 0 else []
        top = self.low + self.height
        ups += [top - OVERLAP / 2] if top < drawing.height else []
        acrosses = [self.left + OVERLAP / 2] if self.left > 0 else []
        right = self.left + self.width
        acrosses += [right - OVERLAP / 2] if right < drawing.width else []
        return [(self.left + self.width * part, up) for up in ups for part in thirds] + [
            (across, self.low + self.height * part) for across in acrosses for part in thirds
        ]


def tiles(drawing: Drawing, width: Mm, height: Mm) -> tuple[Tile, ...]:
    """The parts of a drawing, none larger than `width` by `height` mm, row by row from the upper left.

    Neighbors share OVERLAP mm. ValueError if a part would be no larger than its overlap.
    """
    across, down = _spans(drawing.width, width), _spans(drawing.height, height)
    count = len(across) * len(down)
    parts = [(left, wide, top, high) for top, high in down for left, wide in across]
    return tuple(
        Tile(left, drawing.height - top - high, wide, high, number, count)
        for number, (left, wide, top, high) in enumerate(parts, 1)
    )


def _spans(whole: Mm, most: Mm) -> list[tuple[Mm, Mm]]:
    """Begin and length of each part along one side."""
    if whole <= most:
        return [(Fraction(0), whole)]
    if most <= OVERLAP:
        raise ValueError("a part must be larger than its overlap")
    step = most - OVERLAP
    count = -((OVERLAP - whole) // step)
    return [(step * n, min(most, whole - step * n)) for n in range(count)]
