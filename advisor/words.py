"""Filling the sentences of the rule base with values, as the person reads them: her tape, her places."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from string import Formatter

from advisor.core.figure import Figure, told
from advisor.core.model import Place
from advisor.figures.formula import Unit
from advisor.lengths import Tape, show
from advisor.lengths.tape import MM_PER

_NUMBER = r"\d+(?:\.\d+| \d+/\d+|/\d+)?"
# "3/8 in", "1 to 1 1/2 in", "1/2, 3/4 or 1 in", "a 4-in zone"; but not "5 in 100", which is a share.
_INCHES = re.compile(rf"(?<![\d/.])({_NUMBER}(?:(?:,|,? to|,? or|,? and) {_NUMBER})*)[ -]in\b(?! \d)")
TOLD_TEXTS = 8192

AFTER: dict[str, str] = {"minutes": " min", "degrees": " degrees", "per_inch": " to the inch", "mm2": " mm2"}


@dataclass(frozen=True)
class Teller:
    """Says values on one tape, and places in the garment's own words."""

    tape: Tape
    places: Mapping[str, Place]

    def value(self, value: Fraction | int | str, unit: Unit = "mm") -> str:
        """One value in words: lengths on the tape, ratios to two places, the rest with its unit."""
        if isinstance(value, str):
            return value
        if unit == "mm" and isinstance(value, Fraction):
            # Half of a length on the tape (fold to stitching, for one) falls between two marks. Rounded, the
            # halves would not add up to the whole; so it is told to the half mark.
            halved = value / self.tape.mark * 2
            return show(value, self.half_marks if halved.denominator == 1 else self.tape)
        number = str(value) if value == int(value) else f"{float(value):.2f}".rstrip("0").rstrip(".")
        return number + AFTER.get(unit, "")

    @property
    def half_marks(self) -> Tape:
        """The same tape read to half a mark."""
        return Tape(self.tape.unit, self.tape.mark / 2)

    def fixed(self, text: str) -> str:
        """`text` with the amounts that stand in it in inches told on this tape."""
        # Most tapes are in inches, and to look a text up takes longer than to see that.
        return text if self.tape.unit == "in" else retold(text, self.tape)

    def figure(self, figure: Figure) -> str:
        """The value of a figure in words."""
        return self.value(figure.value, figure.unit)

    def formula(self, figure: Figure) -> str:
        """The formula of a figure with its inputs and its answer."""
        return self.fixed(told(figure, self.value))

    def place(self, name: str) -> str:
        """What a place is called."""
        return self.places[name].words if name in self.places else name

    def say(self, sentence: str, bound: Mapping[str, object]) -> str:
        """`sentence` with its {names} filled in from `bound`, starting with a capital."""
        filled = {name: self._bound(name, bound[name]) for name in names_in(sentence)}
        return capital(self.fixed(sentence.format(**filled)))

    def _bound(self, name: str, value: object) -> str:
        if isinstance(value, Figure):
            return self.figure(value)
        if isinstance(value, str):
            return self.place(value) if name in ("place", "other") else value
        if isinstance(value, int):
            return str(value)
        if isinstance(value, Fraction):
            unit: Unit = "ratio" if name.startswith("ratio") else "mm"
            return self.value(abs(value) if unit == "mm" else value, unit)
        return str(value)


@lru_cache(maxsize=TOLD_TEXTS)
def retold(text: str, tape: Tape) -> str:
    """`text` with its amounts in inches told on `tape`: the rule base is written in inches, a tape may be metric.

    A run of amounts ("1 to 1 1/2 in") becomes a run. On an inch tape the text stays as it was written.
    """
    if tape.unit == "in":
        return text
    return _INCHES.sub(lambda found: _run_on(found[1], tape), text)


def _run_on(run: str, tape: Tape) -> str:
    unit = f" {tape.unit}"
    amount = re.sub(_NUMBER, lambda found: show(_inches(found[0]), tape).removesuffix(unit), run)
    return amount + unit


def _inches(number: str) -> Fraction:
    return sum((Fraction(part) for part in number.split()), Fraction(0)) * MM_PER["in"]


def names_in(sentence: str) -> tuple[str, ...]:
    """The {names} of a sentence, in order."""
    return tuple(name for _, name, _, _ in Formatter().parse(sentence) if name)


def capital(text: str) -> str:
    """`text` with its first letter large."""
    return text[:1].upper() + text[1:]
