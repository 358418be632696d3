"""Tapes: nearest marks, shown text, and that shown text reads back as the same length."""

import json
from collections.abc import Callable
from fractions import Fraction as F

import pytest
from hypothesis import given
from hypothesis import strategies as st

from advisor.errors import LengthError
from advisor.lengths import INCH_TAPE, METRIC_TAPE, TAPES, Tape, Unit, as_json, on_tape, read_length, show

INCH = F(254, 10)
MM_TAPE = Tape("mm", F(1, 2))
EIGHTHS = Tape("in", INCH / 8)
ALL_TAPES = [INCH_TAPE, METRIC_TAPE, MM_TAPE, EIGHTHS, Tape("in", INCH / 64), Tape("cm", F(5))]
exact_mm = st.fractions(-3000, 3000, max_denominator=5000)


def test_the_ready_tapes() -> None:
    assert TAPES == {"in": INCH_TAPE, "cm": METRIC_TAPE}
    assert (INCH_TAPE.unit, INCH_TAPE.mark) == ("in", F("1.5875"))  # 25.4 / 16 by hand
    assert (METRIC_TAPE.unit, METRIC_TAPE.mark) == ("cm", 1)


@pytest.mark.parametrize(
    ("mm", "tape", "text"),
    [
        (F("698.5"), INCH_TAPE, "27 1/2 in"),
        (F("15.875"), INCH_TAPE, "5/8 in"),
        (F(0), INCH_TAPE, "0 in"),
        (F("-6.35"), INCH_TAPE, "-1/4 in"),
        (F("-31.75"), INCH_TAPE, "-1 1/4 in"),
        (F("25.4"), INCH_TAPE, "1 in"),
        (F(100), INCH_TAPE, "3 15/16 in"),  # 100 / 25.4 x 16 = 62.99 marks
        (F(10), INCH_TAPE, "3/8 in"),  # 6.30 marks
        (F(100), EIGHTHS, "3 7/8 in"),  # 31.50 (31.496) marks of 1/8: 31
        (F("-0.1"), INCH_TAPE, "0 in"),
        (F(705), METRIC_TAPE, "70.5 cm"),
        (F(700), METRIC_TAPE, "70 cm"),
        (F(12), METRIC_TAPE, "1.2 cm"),
        (F(5), METRIC_TAPE, "0.5 cm"),
        (F(0), METRIC_TAPE, "0 cm"),
        (F(-5), METRIC_TAPE, "-0.5 cm"),
        (F("704.5"), METRIC_TAPE, "70.5 cm"),
        (F("704.49"), METRIC_TAPE, "70.4 cm"),
        (F("12.5"), MM_TAPE, "12.5 mm"),
        (F(1200), MM_TAPE, "1200 mm"),
    ],
)
def test_show(mm: F, tape: Tape, text: str) -> None:
    assert show(mm, tape) == text


def test_every_sixteenth_to_100_inches_reads_back() -> None:
    for count in range(1601):
        mm = count * INCH / 16
        assert read_length(show(mm, INCH_TAPE), unit="cm") == mm


def test_every_millimeter_to_10_meters_reads_back() -> None:
    for mm in range(10_001):
        assert read_length(show(F(mm), METRIC_TAPE), unit="in") == mm


@given(exact_mm, st.sampled_from(ALL_TAPES), st.sampled_from(["in", "cm", "mm"]))
def test_shown_text_is_ascii_and_reads_back_as_the_mark(mm: F, tape: Tape, unit: Unit) -> None:
    text = show(mm, tape)
    assert text.isascii()
    size = read_length(text.removeprefix("-"), unit=unit)
    assert (-size if text.startswith("-") else size) == on_tape(mm, tape)


@given(exact_mm, st.sampled_from(ALL_TAPES))
def test_the_mark_is_the_nearest_and_halves_go_up(mm: F, tape: Tape) -> None:
    mark = on_tape(mm, tape)
    assert (mark / tape.mark).denominator == 1
    assert -tape.mark / 2 < mark - mm <= tape.mark / 2
    assert on_tape(mark, tape) == mark


def test_shown_inches_agree_with_an_outside_conversion(to_mm: Callable[[F, str], F]) -> None:
    for mm in range(0, 3000, 7):
        shown = show(F(mm), INCH_TAPE).removesuffix(" in")
        inches = sum((F(part) for part in shown.split()), F(0))
        assert abs(to_mm(inches, "inch") - mm) <= to_mm(F(1, 32), "inch")


def test_json_keeps_the_length_and_shows_the_mark() -> None:
    assert as_json(F("698.5"), INCH_TAPE) == {"mm": 698.5, "unit": "in", "text": "27 1/2 in"}
    third = as_json(INCH / 3, METRIC_TAPE)  # 25.4 / 3 = 8.4666...
    assert json.dumps(third) == '{"mm": 8.467, "unit": "cm", "text": "0.8 cm"}'
    assert json.dumps(as_json(F(-1, 10_000), METRIC_TAPE)["mm"]) == "0.0"


@given(exact_mm)
def test_json_millimeters_have_three_decimals_at_most(mm: F) -> None:
    written = F(json.dumps(as_json(mm, METRIC_TAPE)["mm"]))
    assert -F(1, 2000) < written - mm <= F(1, 2000)
    assert (written * 1000).denominator == 1


@pytest.mark.parametrize(
    ("unit", "mark", "words"),
    [
        ("in", INCH / 3, "inch tape"),
        ("in", F(1), "inch tape"),
        ("in", INCH / 128, "inch tape"),
        ("cm", F(1, 3), "metric tape"),
        ("mm", F(1, 7), "metric tape"),
        ("cm", F(0), "apart"),
        ("in", F(-1), "apart"),
        ("ell", F(1), "'ell'"),
    ],
)
def test_a_tape_that_could_not_be_written_is_refused(unit: Unit, mark: F, words: str) -> None:
    with pytest.raises(LengthError) as caught:
        Tape(unit, mark)
    assert words in caught.value.what
    assert caught.value.hint
