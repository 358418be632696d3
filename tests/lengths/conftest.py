"""The outside converter of the length tests: pint with exact fractions, made once."""

from collections.abc import Callable
from fractions import Fraction

import pint
import pytest

ToMm = Callable[[Fraction, str], Fraction]


@pytest.fixture(scope="session")
def to_mm() -> ToMm:
    """Millimeters in `number` of a unit, by pint's definitions."""
    ureg = pint.UnitRegistry(non_int_type=Fraction)

    def convert(number: Fraction, unit: str) -> Fraction:
        return Fraction(ureg.Quantity(number, unit).to("mm").magnitude)

    return convert
