"""The edge to general units: lengths as pint quantities for formulas, and typed cloth weights.

pint is loaded on first use, because its import and its registry take about as long as all the rest of a
start; and it is never given typed text, because it reads '27 1/2 in' as 27 times 1/2 in and drops decimal
commas.
"""

import re
from fractions import Fraction
from functools import cache
from threading import Lock
from typing import TYPE_CHECKING, Any, Final

from advisor.lengths.refusal import Line
from advisor.lengths.scan import amount, misplaced, scan
from advisor.lengths.tape import MM_PER, Mm

if TYPE_CHECKING:
    import pint

_making = Lock()

# An avoirdupois ounce is 28.349523125 g: a pound of 7000 grains of 64.79891 mg, over 16 (the tests check it
# against pint's own definitions and the six figures of 16 CFR 500.19(a)).
GSM_PER_OZ_YD2: Final = Fraction("28.349523125") / (MM_PER["yd"] / 1000) ** 2

LEAST_GSM: Final = Fraction(5)
MOST_GSM: Final = Fraction(2000)
"""Cloth weights believed, in g/m2: wider than anything a home machine sews. Common practice, no source."""

_WEIGHT_UNITS: Final = (
    (re.compile(r"gsm|g ?/ ?m(?:2|\^2|²)", re.ASCII | re.IGNORECASE), Fraction(1)),
    (
        re.compile(
            r"(?:oz|ounces?)(?: ?/ ?| per )(?:yd(?:2|\^2|²)|(?:sq|square) (?:yd|yard))",
            re.ASCII | re.IGNORECASE,
        ),
        GSM_PER_OZ_YD2,
    ),
)


def registry() -> "pint.UnitRegistry[Any]":
    """The one unit registry of the program, exact in fractions; quantities of two registries do not mix."""
    with _making:
        return _registry()


@cache
def _registry() -> "pint.UnitRegistry[Any]":
    import pint

    return pint.UnitRegistry(non_int_type=Fraction)


def quantity(mm: Mm) -> "pint.Quantity[Fraction]":
    """`mm` as a pint quantity in millimeters; conversions of it stay exact fractions."""
    return registry().Quantity(mm, "mm")


def area_weight(text: str) -> Fraction:
    """The cloth weight typed as `text`, in g/m2, exact.

    Accepts an amount (see advisor.lengths.scan) and a unit: `240 gsm`, `240 g/m2`, `g/m^2`, `g/m²`,
    `7 oz/yd2`, `oz/yd^2`, `oz/yd²`, `oz/sq yd`, `6 1/2 oz per square yard`. Plain ounces are refused because
    they may be ounces of a running yard, and a bare number because nothing tells its unit.

    Raises ReadingError, a LengthError, with the offending character and what to type instead.
    """
    line = Line(text, "cloth weight", "240 gsm or 7 oz/yd2")
    tokens = scan(line)
    number = amount(line, tokens, 0)
    if number.after == len(tokens):
        raise line.refuse(tokens[-1].end, "a weight with no unit", f"add its unit, as in {line.example}")
    following = tokens[number.after]
    unit = line.text[following.start : tokens[-1].end]
    for pattern, gsm in _WEIGHT_UNITS:
        match = pattern.match(unit)
        if match and match.end() == len(unit):
            return _believed(line, number.value * gsm, number.start)
        if match:
            raise line.refuse(following.start + match.end(), "text after the unit", f"type {line.example}")
    if following.text.lower() in ("oz", "ounce", "ounces", "g", "gram", "grams"):
        raise line.refuse(following.start, "a weight of what area?", f"name the area, as in {line.example}")
    raise misplaced(line, tokens, number.after)


def _believed(line: Line, gsm: Fraction, at: int) -> Fraction:
    if LEAST_GSM <= gsm <= MOST_GSM:
        return gsm
    side = "lighter" if gsm < LEAST_GSM else "heavier"
    hint = f"accepted here: {LEAST_GSM} to {MOST_GSM} gsm (1 oz/yd2 is about {round(GSM_PER_OZ_YD2)} gsm)"
    raise line.refuse(at, f"{side} than cloth can be", hint)
