"""Figures as the core passes them on, and the few things done to one without a formula of its own."""

from collections.abc import Mapping
from fractions import Fraction

from advisor.figures.formula import FORMULAS, Figure, Record, Show, Unit, Value

__all__ = ["Figure", "Show", "Unit", "Value", "mm_of", "taken", "times", "told"]

TAKEN = "taken as found"
TIMES = "times"


def taken(id: str, value: Fraction, source_key: str, source: str = "case") -> Figure:
    """A length (mm) taken over as it is from the finding, measure or amount named by `source_key`."""
    return Figure(id, value, TAKEN, (source_key,), source, "mm", ((source_key, value),))


def times(figure: Figure, count: int, id: str = "") -> Figure:
    """`count` times a figure, sign and all: -1 is the same length taken away."""
    value = mm_of(figure) * count
    return Figure(id or figure.id, value, TIMES, (figure.id,), figure.source, "mm", ((figure.id, mm_of(figure)),))


def mm_of(figure: Figure) -> Fraction:
    """The value of a figure that is a length, mm."""
    assert isinstance(figure.value, Fraction), f"{figure.id} is not a length"
    return figure.value


def told(figure: Figure, show: Show) -> str:
    """The formula of a figure with its inputs filled in, as a sentence fragment."""
    answer = show(figure.value, figure.unit)
    if figure.formula in FORMULAS:
        formula = FORMULAS[figure.formula]
        given: Mapping[str, object] = dict(figure.given)
        record = Record(formula.id, given, formula.units, figure.value, formula.gives, formula.words, formula.source)  # type: ignore[arg-type]
        return record.told(show)
    if figure.formula == TIMES:
        _, value = figure.given[0]
        count = mm_of(figure) / value if value else Fraction(0)  # type: ignore[operator]
        return f"{count} x {show(value, figure.unit)} = {answer}"  # type: ignore[arg-type]
    return answer
