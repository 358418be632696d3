"""Published values that are looked up, not reckoned. Each row carries its own source.

Where sources disagree a word has several rows, the better source first: show both, do not average.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from advisor.errors import KnowledgeError
from advisor.figures.exact import inches, pick
from advisor.figures.formula import Figure, FigureError, Unit

End = Literal["least", "most"]


@dataclass(frozen=True)
class Row:
    """A range in the table's unit; None at an end means that the source sets no limit there."""

    least: Fraction | None
    most: Fraction | None
    source: str
    says: str = ""


TABLES: dict[str, "Table"] = {}


@dataclass(frozen=True)
class Table:
    """Rows by word. `about` tells what the range is; `unit` what it is in."""

    name: str
    about: str
    unit: Unit
    rows: Mapping[str, tuple[Row, ...]]

    def __post_init__(self) -> None:
        if self.name in TABLES:
            raise KnowledgeError("two tables carry this name", where=self.name)
        TABLES[self.name] = self

    def all_of(self, word: str) -> tuple[Row, ...]:
        """Every row for `word`, better source first. FigureError for a word not in the table."""
        return pick(word, self.rows, self.name)

    def row(self, word: str) -> Row:
        """The row of the better source for `word`."""
        return self.all_of(word)[0]

    def end(self, word: str, end: End) -> Fraction:
        """The least or the most for `word`; FigureError where the source sets no such limit."""
        found = self.row(word).least if end == "least" else self.row(word).most
        if found is None:
            raise FigureError(f"the source sets no {end} for '{word}'", where=self.name)
        return found

    def figure(self, id: str, word: str, end: End) -> Figure:
        """The least or the most for `word`, as a figure under `id`, with the row's own source."""
        value, source = self.end(word, end), self.row(word).source
        return Figure(id, value, f"table {self.name}", (word,), source, self.unit, ((self.name, word),))


def inch_row(least: str | None, most: str | None, source: str, says: str = "") -> Row:
    """A row given in inches as on a tape, kept in millimeters."""
    return Row(None if least is None else inches(least), None if most is None else inches(most), source, says)
