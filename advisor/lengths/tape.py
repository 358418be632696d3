"""Exact lengths, the two tapes they are read from, and how they are shown.

A length is a `Fraction` of millimeters from the moment it is read. It meets a tape only when it is shown or
marked: `on_tape` picks the nearest mark, and `show` writes it in ASCII, so that it survives any terminal,
file and printer font.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Final, Literal, TypedDict

from advisor.errors import LengthError

Mm = Fraction
"""A length in millimeters, exact."""

Unit = Literal["in", "cm", "mm"]
"""The unit a bare number is read in, and the unit a tape is shown in."""

# 25.4 mm to the inch, 304.8 to the foot and 914.4 to the yard are exact: 16 CFR 500.19(a), starred rows
# ("1 inch=2.54 cm", "1 foot=30.48 cm", "1 yard=0.9144m").
MM_PER: Final[dict[str, Fraction]] = {
    "in": Fraction(254, 10),
    "ft": Fraction(3048, 10),
    "yd": Fraction(9144, 10),
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
}

BINARY_MARKS: Final = frozenset({1, 2, 4, 8, 16, 32, 64})
"""Denominators an inch ruler is divided by; a drawn inch fraction uses no other."""


def _is_decimal(value: Fraction) -> bool:
    rest = value.denominator
    for prime in (2, 5):
        while rest % prime == 0:
            rest //= prime
    return rest == 1


@dataclass(frozen=True)
class Tape:
    """A measuring tape: the `unit` it is read in and the distance between two marks, `mark`, in mm.

    An inch tape is marked in halves, quarters ... 64ths of an inch; a metric one in any step a finite decimal
    can write. Raises LengthError for a mark that `show` could not write exactly.
    """

    unit: Unit
    mark: Mm

    def __post_init__(self) -> None:
        if self.unit not in ("in", "cm", "mm"):
            raise LengthError(f"no tape is read in {self.unit!r}", hint="use in, cm or mm")
        if self.mark <= 0:
            raise LengthError("the marks of a tape must lie apart", hint="give a mark above 0 mm")
        steps = self.mark / MM_PER[self.unit]
        if self.unit == "in" and steps.denominator not in BINARY_MARKS:
            raise LengthError("an inch tape has no such mark", hint="use 1/2, 1/4, 1/8 ... or 1/64 in")
        if self.unit != "in" and not _is_decimal(steps):
            raise LengthError("a metric tape has no such mark", hint="use a decimal step: 1 or 0.5 mm")


INCH_TAPE: Final = Tape("in", MM_PER["in"] / 16)
"""An inch tape marked in sixteenths."""

METRIC_TAPE: Final = Tape("cm", Fraction(1))
"""A tape numbered in centimeters and marked in millimeters."""

TAPES: Final[dict[str, Tape]] = {"in": INCH_TAPE, "cm": METRIC_TAPE}
"""The ready tapes by the unit they are read in."""


class LengthJson(TypedDict):
    """A length for a JSON reader: `mm` rounded half up to 3 decimals, and `text` as the tape shows it."""

    mm: float
    unit: Unit
    text: str


def on_tape(mm: Mm, tape: Tape) -> Mm:
    """The mark of `tape` nearest to `mm`, in mm: an exact multiple of the mark, halves going up."""
    return round_to(mm, tape.mark)


def round_to(mm: Mm, step: Mm) -> Mm:
    """The multiple of `step` nearest to `mm`, halves going up (toward plus infinity)."""
    return (mm / step + Fraction(1, 2)).__floor__() * step


def show(mm: Mm, tape: Tape) -> str:
    """`mm` as read on `tape`, to its mark: '27 1/2 in', '5/8 in', '0 in'; '70.5 cm', '1.2 cm', '70 cm'.

    A metric tape always shows its own unit, however short the length, so that figures under one another
    compare at a glance. A negative value, a difference, takes a minus in front: '-1 1/4 in'. `read_length`
    gives every non-negative shown text back as the same length.
    """
    value = on_tape(mm, tape)
    size = abs(value) / MM_PER[tape.unit]
    number = _mixed(size) if tape.unit == "in" else _decimal(size)
    return f"{'-' if value < 0 else ''}{number} {tape.unit}"


def show_range(least: Mm, most: Mm, tape: Tape) -> str:
    """The marks of `tape` from `least` to `most`, as 'A to B'; both marks lie inside the range if any do."""
    low = -round_down(-least, tape.mark)
    high = round_down(most, tape.mark)
    if low > high:
        low, high = least, most
    return f"{show(low, tape)} to {show(high, tape)}"


def round_down(mm: Mm, step: Mm) -> Mm:
    """The greatest multiple of `step` not above `mm`."""
    return (mm / step).__floor__() * step


def as_json(mm: Mm, tape: Tape) -> LengthJson:
    """`mm` for JSON: {"mm": 698.5, "unit": "in", "text": "27 1/2 in"}.

    The number is the length itself rounded half up to 1/1000 mm, not the tape mark; the text is the mark.
    """
    return {"mm": float(round_to(mm, Fraction(1, 1000))), "unit": tape.unit, "text": show(mm, tape)}


def _mixed(size: Fraction) -> str:
    """A whole number and a proper fraction: '27 1/2', '5/8', '27', '0'."""
    whole, rest = divmod(size, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def _decimal(size: Fraction) -> str:
    """A finite decimal in full, without closing zeros: '70.5', '70'."""
    places = 0
    while (size * 10**places).denominator != 1:
        places += 1
    digits = str(int(size * 10**places)).rjust(places + 1, "0")
    return f"{digits[:-places]}.{digits[-places:]}" if places else digits
