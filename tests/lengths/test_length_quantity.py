"""The edge to pint, and cloth weights; pint's own definitions are the oracle for the factors."""

import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from fractions import Fraction as F

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.errors import LengthError
from advisor.lengths import ReadingError, area_weight, quantity, read_length
from advisor.lengths.quantity import registry


def test_importing_and_reading_load_no_pint() -> None:
    code = (
        "import sys; from advisor.lengths import area_weight, read_length; read_length('27 1/2', unit='in');"
        "area_weight('7 oz/yd2'); sys.exit('pint' in sys.modules)"
    )
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


def test_a_quantity_converts_exactly() -> None:
    seam = quantity(read_length("27 1/2 in", unit="cm"))
    assert seam.to("inch").magnitude == F(55, 2)
    assert seam.to("meter").magnitude == F(1397, 2000)
    assert (seam + quantity(F(1, 3))).magnitude == F(1397, 2) + F(1, 3)


def test_there_is_one_registry_even_from_many_threads() -> None:
    with ThreadPoolExecutor(4) as pool:
        found = list(pool.map(lambda _: registry(), range(8)))
    assert all(one is found[0] for one in found)


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("240 gsm", "240", "g/m**2"),
        ("240gsm", "240", "g/m**2"),
        (" 240 GSM ", "240", "g/m**2"),
        ("240 g/m2", "240", "g/m**2"),
        ("240 g/m^2", "240", "g/m**2"),
        ("240 g/m²", "240", "g/m**2"),
        ("240 g / m2", "240", "g/m**2"),
        ("142,5 gsm", "285/2", "g/m**2"),
        ("7 oz/yd2", "7", "oz/yd**2"),
        ("7 oz/yd^2", "7", "oz/yd**2"),
        ("7 oz/yd²", "7", "oz/yd**2"),
        ("7 oz/sq yd", "7", "oz/yd**2"),
        ("6 1/2 oz per square yard", "13/2", "oz/yd**2"),
        ("6½ ounces per sq yd", "13/2", "oz/yd**2"),
        ("12.75 Oz/Yd2", "51/4", "oz/yd**2"),
    ],
)
def test_cloth_weights_agree_with_pint(text: str, number: str, unit: str) -> None:
    assert area_weight(text) == registry().Quantity(F(number), unit).to("g/m**2").magnitude


def test_an_ounce_per_square_yard_agrees_with_published_factors() -> None:
    # 16 CFR 500.19(a), six figures: 1 ounce = 28.349 5 g, 1 square yard = 0.836 127 m2.
    assert area_weight("1 oz/yd2") == pytest.approx(28.3495 / 0.836127, rel=2e-6)


@pytest.mark.parametrize(
    ("text", "column", "problem", "hint"),
    [
        ("12 oz", 4, "of what area", "7 oz/yd2"),
        ("12 ounces", 4, "of what area", "7 oz/yd2"),
        ("240 g", 5, "of what area", "240 gsm"),
        ("12 oz/yd", 4, "of what area", "7 oz/yd2"),
        ("240", 4, "no unit", "240 gsm"),
        ("240 gsm cotton", 8, "text after the unit", "240 gsm"),
        ("240 g/m25", 9, "text after the unit", "240 gsm"),
        ("200-240 gsm", 4, "range", "one value"),
        ("200 to 240 gsm", 5, "range", "one value"),
        ("about 240 gsm", 1, "an estimate", "leave the word out"),
        ("-240 gsm", 1, "minus", "leave it out"),
        ("1,000 gsm", 2, "comma before three digits", "point"),
        ("240 cm", 5, "no unit here", "240 gsm"),
        ("240 tex", 5, "no unit here", "240 gsm"),
        ("gsm", 1, "no unit here", "240 gsm"),
        ("", 1, "nothing was typed", "240 gsm"),
        ("4.9 gsm", 1, "lighter than cloth can be", "5 to 2000 gsm"),
        ("59 oz/yd2", 1, "heavier than cloth can be", "about 34 gsm"),
        ("240 gsm" + " " * 60, 61, "more than 60", "240 gsm"),
    ],
)
def test_cloth_weights_refused(text: str, column: int, problem: str, hint: str) -> None:
    with pytest.raises(ReadingError) as caught:
        area_weight(text)
    assert caught.value.where == f"cloth weight, character {column}"
    assert problem in caught.value.what
    assert hint in caught.value.hint


RARE = "240.5 gsm7oz/ydſ²٣２½\x00\u202e\ud800\u00a0"


@settings(max_examples=200, deadline=None)
@given(st.one_of(st.text(RARE, max_size=60), st.text("0123456789 .,/gsmozydpersq^²½-", max_size=20)))
def test_any_text_gives_a_weight_or_a_refusal(text: str) -> None:
    try:
        assert 5 <= area_weight(text) <= 2000
    except LengthError as refusal:
        assert refusal.where and refusal.hint
