"""Lengths: read strictly, kept exact, shown on the wearer's own tape.

    read_length(text, unit="in")      '27 1/2 in' -> Fraction(1397, 2) mm, or a ReadingError with the place
    show(mm, INCH_TAPE)               Fraction(1397, 2) -> '27 1/2 in'
    on_tape(mm, tape)                 the nearest mark, an exact multiple of it
    as_json(mm, tape)                 {"mm": 698.5, "unit": "in", "text": "27 1/2 in"}
    split, share, positions           lengths shared out in marks that add up
    quantity(mm), area_weight(text)   pint quantities for formulas; typed cloth weights in g/m2

Everything inside is a `Fraction` of millimeters (`Mm`). Importing this package does not load pint.
"""

from advisor.lengths.quantity import area_weight, quantity
from advisor.lengths.reading import read_length
from advisor.lengths.refusal import ReadingError
from advisor.lengths.sharing import positions, share, split
from advisor.lengths.tape import (
    INCH_TAPE,
    METRIC_TAPE,
    TAPES,
    LengthJson,
    Mm,
    Tape,
    Unit,
    as_json,
    on_tape,
    show,
)

__all__ = [
    "INCH_TAPE",
    "METRIC_TAPE",
    "TAPES",
    "LengthJson",
    "Mm",
    "ReadingError",
    "Tape",
    "Unit",
    "area_weight",
    "as_json",
    "on_tape",
    "positions",
    "quantity",
    "read_length",
    "share",
    "show",
    "split",
]
