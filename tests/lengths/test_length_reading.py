"""What the reader accepts, checked against pint's conversion factors and exact arithmetic.

pint is given numbers and unit names here, never a typed text: it misreads the very forms under test.
"""

import re
from collections.abc import Callable
from fractions import Fraction as F

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.errors import LengthError
from advisor.lengths import ReadingError, read_length

INCH = F(254, 10)
ToMm = Callable[[F, str], F]

# Every right-hand side is (number, unit name) pairs, converted to mm by pint.
ACCEPTED = {
    "27 1/2 in": [("55/2", "inch")],
    '27-1/2"': [("55/2", "inch")],
    "27-1/2": [("55/2", "inch")],
    "27-½ in": [("55/2", "inch")],
    "27½ in": [("55/2", "inch")],
    "27 ½": [("55/2", "inch")],
    "27\u00a0½\u2009in": [("55/2", "inch")],
    "27 1\u20442 in": [("55/2", "inch")],
    '5/8"': [("5/8", "inch")],
    "⅝ in": [("5/8", "inch")],
    "5/8in": [("5/8", "inch")],
    "0 5/8 in": [("5/8", "inch")],
    "63/64 in": [("63/64", "inch")],
    "4/8 in": [("1/2", "inch")],
    "5'4\"": [("5", "foot"), ("4", "inch")],
    "5' 4 1/2\"": [("5", "foot"), ("9/2", "inch")],
    "5 ft 4 in": [("5", "foot"), ("4", "inch")],
    "5′4″": [("5", "foot"), ("4", "inch")],
    "5’ 4”": [("5", "foot"), ("4", "inch")],
    "5‘4“": [("5", "foot"), ("4", "inch")],
    "1 yd 4 in": [("1", "yard"), ("4", "inch")],
    "1yd4in": [("1", "yard"), ("4", "inch")],
    "1 yd 2 ft 3 1/4 in": [("1", "yard"), ("2", "foot"), ("13/4", "inch")],
    "1 1/2 yards": [("3/2", "yard")],
    "2/3 yd": [("2/3", "yard")],
    "⅓ yard": [("1/3", "yard")],
    "2 yds": [("2", "yard")],
    "1 yd. 4 in.": [("1", "yard"), ("4", "inch")],
    "3 feet": [("3", "foot")],
    "1 foot": [("1", "foot")],
    "1 ft.": [("1", "foot")],
    "70cm": [("70", "cm")],
    "70 cm": [("70", "cm")],
    "70,5 cm": [("141/2", "cm")],
    "70.5 cm": [("141/2", "cm")],
    "70 1/2 cm": [("141/2", "cm")],
    "12.7mm": [("127/10", "mm")],
    "3.175 mm": [("1/8", "inch")],
    "1,5875 mm": [("1/16", "inch")],
    "1.2 m": [("6/5", "meter")],
    "1m 20cm": [("1", "meter"), ("20", "cm")],
    "1 m 20 cm 5 mm": [("1", "meter"), ("20", "cm"), ("5", "mm")],
    "2 metres": [("2", "meter")],
    "2 meters": [("2", "meter")],
    "70 centimetres": [("70", "cm")],
    "1 centimetre": [("1", "cm")],
    "70 centimeters": [("70", "cm")],
    "1 centimeter": [("1", "cm")],
    "12 millimeters": [("12", "mm")],
    "12 millimetre": [("12", "mm")],
    "27.5": [("55/2", "inch")],
    "27 1/2": [("55/2", "inch")],
    "27": [("27", "inch")],
    ".5 in": [("1/2", "inch")],
    ",5 cm": [("1/2", "cm")],
    "27 inches": [("27", "inch")],
    "1 inch": [("1", "inch")],
    "27 in.": [("27", "inch")],
    "27 IN": [("27", "inch")],
    "27 Inches": [("27", "inch")],
    "70 CM": [("70", "cm")],
    "12 Mm": [("12", "mm")],
    "  27 in \t\n": [("27", "inch")],
    "27   1/2   in": [("55/2", "inch")],
    "027 in": [("27", "inch")],
    "0": [("0", "inch")],
    "0.0 cm": [("0", "cm")],
    "10 m": [("10", "meter")],
}


@pytest.mark.parametrize(("text", "parts"), ACCEPTED.items(), ids=ACCEPTED)
def test_accepts(text: str, parts: list[tuple[str, str]], to_mm: ToMm) -> None:
    expected = sum((to_mm(F(number), unit) for number, unit in parts), F(0))
    assert read_length(text, unit="in") == expected


def test_published_factors_are_exact() -> None:
    # 16 CFR 500.19(a), the rows starred "exactly": 1 inch = 2.54 cm, 1 foot = 30.48 cm, 1 yard = 0.9144 m.
    assert read_length("1 in", unit="cm") == F("25.4")
    assert read_length("1 ft", unit="cm") == F("304.8")
    assert read_length("1 yd", unit="cm") == F("914.4")


@pytest.mark.parametrize(("unit", "factor"), [("in", INCH), ("cm", F(10)), ("mm", F(1))])
@pytest.mark.parametrize(("text", "number"), [("27 1/2", F(55, 2)), ("27.5", F(55, 2)), ("⅜", F(3, 8))])
def test_a_bare_number_takes_the_unit_of_the_case(unit: str, factor: F, text: str, number: F) -> None:
    assert read_length(text, unit=unit) == number * factor  # type: ignore[arg-type]


@pytest.mark.parametrize("unit", ["in", "cm", "mm"])
def test_a_typed_unit_beats_the_unit_of_the_case(unit: str) -> None:
    assert read_length('27"', unit=unit) == 27 * INCH  # type: ignore[arg-type]


def test_limits_are_inclusive() -> None:
    for text in ("20 in", "60 in"):
        assert read_length(text, unit="in", least=20 * INCH, most=60 * INCH)
    assert read_length("30 m", unit="cm", most=F(30_000)) == 30_000
    with pytest.raises(ReadingError):
        read_length("10001 mm", unit="mm")


@given(st.integers(0, 300), st.integers(0, 63), st.sampled_from([2, 4, 8, 16, 32, 64]), st.sampled_from(" -"))
def test_every_mixed_number_of_a_tape(whole: int, top: int, bottom: int, gap: str) -> None:
    top = top % bottom
    text = f"{whole}{gap}{top}/{bottom} in" if top else f"{whole} in"
    assert read_length(text, unit="cm") == (whole + F(top, bottom)) * INCH


@given(st.decimals(0, 900, places=4), st.sampled_from(".,"))
def test_every_decimal_with_point_or_comma(number: object, mark: str) -> None:
    assert read_length(str(number).replace(".", mark) + " cm", unit="in") == F(str(number)) * 10


ALPHABET = "0123456789" * 2 + " .,/-'\"" * 2 + "½⅝⅕″′–−\u2044\u00a0incmftydINCM²２٣\x1b\u202e\u0301+~ſKİeta"
MUTABLE = [text for text in ACCEPTED if text.strip()]

mutated = st.builds(
    lambda text, at, cut, new: (text[: at % (len(text) + 1)] + new + text[at % (len(text) + 1) + cut :])[:60],
    st.sampled_from(MUTABLE),
    st.integers(0, 60),
    st.integers(0, 3),
    st.text(ALPHABET, max_size=3),
)
# Code points rather than st.text(): surrogates come too, and no table of all characters is built first.
any_unicode = st.lists(st.integers(0, 0x10FFFF), max_size=60).map(lambda codes: "".join(map(chr, codes)))
any_text = st.one_of(mutated, st.text(ALPHABET, max_size=60), any_unicode)

VULGAR = {"½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4"} | {
    "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
MARKS = {"′": " foot ", "’": " foot ", "‘": " foot ", "'": " foot "} | {
    "″": " inch ", "”": " inch ", "“": " inch ", '"': " inch ",
}  # fmt: skip


def loosely(text: str, to_mm: ToMm) -> F:
    """The value of an accepted text by substitution: refuses nothing, so it is an oracle for values only."""
    text = text.casefold().replace("\u2044", "/").replace(",", ".")
    for sign, plain in (VULGAR | MARKS).items():
        text = text.replace(sign, f" {plain}")
    text = re.sub(r"([a-z])\.", r"\1", text).replace("-", " ").replace("yds", "yard")
    total = F(0)
    for numbers, unit in re.findall(r"([0-9./\s]+)([a-z]*)", text):
        if numbers.strip():
            number = sum((F("0" + one if one[0] == "." else one) for one in numbers.split()), F(0))
            total += to_mm(number, unit or "inch")
    return total


@settings(max_examples=600, deadline=None)
@given(any_text)
def test_any_text_gives_the_right_value_or_a_refusal(to_mm: ToMm, text: str) -> None:
    try:
        value = read_length(text, unit="in")
    except LengthError as refusal:
        assert isinstance(refusal, ReadingError)
        assert 1 <= refusal.column <= len(text) + 1
        assert refusal.what and refusal.hint
        assert f"character {refusal.column}" in refusal.where
        assert str(refusal).replace("\n", "").isprintable()
    else:
        assert 0 <= value <= 10_000
        assert value == loosely(text, to_mm)


def test_mutated_texts_are_often_accepted() -> None:
    """The property above would check no value if every mutated text were refused."""
    accepted = 0
    for text in MUTABLE:
        for digit in "37":
            try:
                read_length(digit + text.strip(), unit="in", most=F(10**6))
                accepted += 1
            except ReadingError:
                pass
    assert accepted > len(MUTABLE)
