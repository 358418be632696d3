"""What our formulas answer to each published example: by id, a function of what is given.

Given numbers come as fractions. A key ending in _in is decimal inches, _cm centimeters, as published.
"""

import re
from collections.abc import Callable
from fractions import Fraction
from typing import Any

from advisor.figures import INCH, Row, Table

Given = dict[str, Any]
Answer = Callable[[Given], Given]
ANSWERS: dict[str, Answer] = {}
CM = Fraction(10)


def answers(*ids: str) -> Callable[[Answer], Answer]:
    def keep(answer: Answer) -> Answer:
        for id in ids:
            assert id not in ANSWERS, f"{id} is answered twice"
            ANSWERS[id] = answer
        return answer

    return keep


def numbered(pattern: str, *numbers: str | int) -> list[str]:
    return [pattern.format(number) for number in numbers]


def mm(inches: Fraction) -> Fraction:
    return Fraction(inches) * INCH


def inch(mm: Fraction | None, without: int = 0) -> Fraction:
    """Back to inches; the published rows write 0 or 99 where a source sets no limit."""
    return Fraction(without) if mm is None else mm / INCH


def row_of(table: Table, word: str, source: str) -> Row:
    """The row of `word` that cites the same source as the published example."""
    keys = re.findall(r"\[([A-Z0-9-]+)\]", source)
    return next(row for row in table.all_of(word) if row.source in keys)
