"""Filling the sentences of the rule base with values, as the person reads them: her tape, her places."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from string import Formatter

from advisor.core.figure import Figure, told
from advisor.core.model import Place
from advisor.figures.formula import Unit
from advisor.lengths import Tape, show

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

    def figure(self, figure: Figure) -> str:
        """The value of a figure in words."""
        return self.value(figure.value, figure.unit)

    def formula(self, figure: Figure) -> str:
        """The formula of a figure with its inputs and its answer."""
        return told(figure, self.value)

    def place(self, name: str) -> str:
        """What a place is called."""
        return self.places[name].words if name in self.places else name

    def say(self, sentence: str, bound: Mapping[str, object]) -> str:
        """`sentence` with its {names} filled in from `bound`, starting with a capital."""
        filled = {name: self._bound(name, bound[name]) for name in names_in(sentence)}
        return capital(sentence.format(**filled))

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


def names_in(sentence: str) -> tuple[str, ...]:
    """The {names} of a sentence, in order."""
    return tuple(name for _, name, _, _ in Formatter().parse(sentence) if name)


def capital(text: str) -> str:
    """`text` with its first letter large."""
    return text[:1].upper() + text[1:]
