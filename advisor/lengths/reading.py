"""The one reader of typed lengths. It never guesses: what can be read in two ways is refused.

    length = amount                         bare, in the unit of the case
           | part part ...                  one system, each unit smaller than the one before it
    part   = amount unit                    only the last amount may carry a fraction or decimals, and each
                                            part is less than one of the unit before it (not 5 ft 14 in)
    amount = see advisor.lengths.scan       27   27.5   70,5   5/8   27 1/2   27-1/2   27½   27 ½
    unit   = in inch inches " ″ ” “         a full stop may follow in, ft and yd
           | ft foot feet ' ′ ’ ‘
           | yd yds yard yards
           | mm millimeter(s)  cm centimeter(s)  m meter(s), also spelled -metre(s)

Letters may be upper or lower case; spaces may stand around the whole and between number and unit, or be left
out. Refused with the place and a hint: ranges, estimates, any minus, mixed systems, repeated or rising units,
commas before three digits, fractions no tape has, fractions of one or more, powers of ten, digits other than
0 to 9, more than 60 characters, and lengths outside the allowed range.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from typing import Final

from advisor.lengths.refusal import Line
from advisor.lengths.scan import Amount, Token, amount, misplaced, scan
from advisor.lengths.tape import MM_PER, TAPES, Mm, Tape, Unit, show_range

MOST_MM: Final = Fraction(10_000)
"""The longest length believed unless the caller allows more: 10 m, beyond any cloth one person alters.
Common practice, no source."""

_WORDS: Final = {
    "in": ("in", "inch", "inches", '"', "\u2033", "\u201d", "\u201c"),
    "ft": ("ft", "foot", "feet", "'", "\u2032", "\u2019", "\u2018"),
    "yd": ("yd", "yds", "yard", "yards"),
    "mm": ("mm", "millimeter", "millimeters", "millimetre", "millimetres"),
    "cm": ("cm", "centimeter", "centimeters", "centimetre", "centimetres"),
    "m": ("m", "meter", "meters", "metre", "metres"),
}
_UNITS: Final = {word: unit for unit, words in _WORDS.items() for word in words}
_DOTTED: Final = frozenset({"in", "ft", "yd", "yds"})
_METRIC: Final = frozenset({"mm", "cm", "m"})
_MM_TAPE: Final = Tape("mm", Fraction(1))
_NAMES: Final[dict[Unit, str]] = {"in": "inches", "cm": "centimeters", "mm": "millimeters"}
_EXAMPLES: Final[dict[Unit, str]] = {"in": "27 1/2 in", "cm": "70.5 cm", "mm": "705 mm"}


@dataclass(frozen=True)
class _Part:
    amount: Amount
    unit: str
    at: int
    bare: bool


def read_length(
    text: str, *, unit: Unit, least: Mm | None = None, most: Mm | None = None, what: str = "length"
) -> Mm:
    """The length typed as `text`, in mm, exact.

    unit:  what a bare number is counted in.
    least: shortest length accepted, in mm; 0 if None.
    most:  longest length accepted, in mm; 10 m if None.
    what:  the name of the asked value, for the message.

    Raises ReadingError, a LengthError, with the offending character and what to type instead.
    """
    line = Line(text, what, _EXAMPLES[unit])
    parts = _parts(line, scan(line), unit)
    for before, part in pairwise(parts):
        _check_follows(line, before, part)
    total = sum((part.amount.value * MM_PER[part.unit] for part in parts), Fraction(0))
    _check_range(line, total, least, most, unit, parts)
    return total


def _parts(line: Line, tokens: list[Token], unit: Unit) -> list[_Part]:
    parts: list[_Part] = []
    at = 0
    while at < len(tokens):
        if parts and parts[-1].bare:
            raise misplaced(line, tokens, at)
        if _unit_at(tokens, at):
            hint = f"the number comes first, then its unit: {line.example}"
            raise line.refuse(tokens[at].start, "a unit with no number before it", hint)
        number = amount(line, tokens, at)
        at = number.after
        named = _unit_at(tokens, at)
        if named:
            parts.append(_Part(number, named, tokens[at].start, bare=False))
            at = _past_unit(tokens, at)
        else:
            parts.append(_Part(number, unit, number.start, bare=True))
    return parts


def _unit_at(tokens: list[Token], at: int) -> str | None:
    if at >= len(tokens) or tokens[at].kind not in ("word", "quote"):
        return None
    return _UNITS.get(tokens[at].text.lower())


def _past_unit(tokens: list[Token], at: int) -> int:
    """The index after the unit at `at` and the full stop of an abbreviation."""
    stop = tokens[at + 1] if at + 1 < len(tokens) else None
    dotted = stop and stop.text == "." and stop.start == tokens[at].end and tokens[at].text.lower() in _DOTTED
    return at + 2 if dotted else at + 1


def _check_follows(line: Line, before: _Part, part: _Part) -> None:
    """Refuse `part` unless it can follow `before`: same system, smaller unit, less than one of `before`."""
    if part.bare:
        hint = "give the last number its unit too, as in 5 ft 4 in or 1 m 20 cm"
        raise line.refuse(part.at, "a number with no unit after one with a unit", hint)
    if (before.unit in _METRIC) != (part.unit in _METRIC):
        hint = "type the whole length in inches, feet and yards, or all of it in metric units"
        raise line.refuse(part.at, "inches and metric units in one length", hint)
    if MM_PER[part.unit] >= MM_PER[before.unit]:
        hint = "the larger unit comes first, and each unit once: 1 yd 4 in, 1 m 20 cm"
        raise line.refuse(part.at, "units out of order", hint)
    if not before.amount.whole:
        hint = "only the last number may have a fraction or decimals: 1 yd 4 1/2 in"
        raise line.refuse(before.amount.start, "a fraction before the last unit", hint)
    if part.amount.value * MM_PER[part.unit] >= MM_PER[before.unit]:
        hint = f"carry it over to the {before.unit}, or check the number for a typing mistake"
        raise line.refuse(part.amount.start, f"this alone makes 1 {before.unit} or more", hint)


def _check_range(
    line: Line, total: Mm, least: Mm | None, most: Mm | None, unit: Unit, parts: list[_Part]
) -> None:
    low = Fraction(0) if least is None else least
    high = MOST_MM if most is None else most
    if low <= total <= high:
        return
    side = "shorter" if total < low else "longer"
    hint = f"accepted here: {show_range(low, high, TAPES.get(unit, _MM_TAPE))}"
    if parts[0].bare:
        hint += f"; a bare number counts as {_NAMES[unit]}"
    raise line.refuse(parts[0].amount.start, f"{side} than it can be", hint)
