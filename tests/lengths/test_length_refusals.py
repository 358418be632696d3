"""What the reader refuses: the place, the reason and the hint of each."""

import copy
import pickle
import unicodedata
from fractions import Fraction as F

import pytest

from advisor.errors import LengthError
from advisor.lengths import ReadingError, read_length

RANGE = ("range", "type one value")
MINUS = ("minus", "leave it out")
TAPE = ("no tape is divided so", "a decimal such as 0.2")
PROPER = ("less than one", "1 1/4 for 5/4")
COMMA = ("comma before three digits", "write decimals with a point")
DIGIT = ("digit other than 0 to 9", "digits 0 to 9")
TWO = ("second number", "type one value")
ORDER = ("units out of order", "larger unit comes first")
MIXED = ("inches and metric", "all of it in metric")
VAGUE = ("an estimate", "leave the")
WORD = ("no unit here", "27 1/2 in")
POINT = ("decimal point out of place", "one decimal point")
STOP = ("no digit after it", "write 27 or 27.5")
SLASH = ("slash out of place", "without spaces")
NO_NUMBER = ("no number before it", "the number comes first")
HIDDEN = ("cannot be seen", "delete it")
CARRY = ("makes 1", "carry it over")
BARE_LAST = ("no unit after one with a unit", "5 ft 4 in")
EARLY_FRACTION = ("fraction before the last unit", "only the last number")
EMPTY = ("nothing was typed", "27 1/2 in")
NOT_NUMBER = ("not a number", "in digits")
LONG = ("longer than it can be", "accepted here: 0 in to 393 11/16 in")

# text: (column, (words of the problem, words of the hint))
REFUSED = {
    "27-28 in": (3, RANGE),
    "27–28": (3, RANGE),
    "27—28 in": (3, RANGE),
    "27 - 28 in": (4, RANGE),
    "27 in - 28 in": (7, RANGE),
    '27"-28"': (4, RANGE),
    "27 to 28": (4, RANGE),
    "27 TO 28 in": (4, RANGE),
    "27 or 28 in": (4, RANGE),
    "between 27 and 28": (1, RANGE),
    "27–1/2 in": (3, RANGE),
    "27−1/2 in": (3, RANGE),
    "1/2-3/4 in": (4, RANGE),
    "27½-28": (4, RANGE),
    "27 -1/2": (4, ("minus sign, or a hyphen", "write 27 1/2 or 27-1/2")),
    "27 -28": (4, ("minus sign, or a hyphen", "write 27 1/2 or 27-1/2")),
    "27- 1/2": (3, RANGE),
    "27-": (3, ("dash out of place", "leave it out")),
    "27-in": (3, ("dash out of place", "leave it out")),
    "-27 in": (1, MINUS),
    "\u221227 in": (1, MINUS),
    "–27 in": (1, MINUS),
    "—27": (1, MINUS),
    "- 27": (1, MINUS),
    " -½": (2, MINUS),
    "1,000 mm": (2, COMMA),
    "0,125 in": (2, COMMA),
    "1,000,5 mm": (2, COMMA),
    "10,000.5 mm": (3, COMMA),
    "5 1,000 mm": (4, COMMA),
    "1/0": (3, ("over zero", "such as 1/2")),
    "27 1/0 in": (6, ("over zero", "such as 1/2")),
    "0/0": (3, ("over zero", "such as 1/2")),
    "0/8 in": (1, ("fraction of nothing", "leave the fraction out")),
    "27 5/4": (4, ("after a whole number a fraction must be less than one", "1 1/4 for 5/4")),
    "27 4/4 in": (4, PROPER),
    "5/4 in": (1, PROPER),
    "31/4 in": (1, ("less than one", "3 1/4 if its space was lost")),
    "271/2": (1, PROPER),
    "1/5 in": (3, TAPE),
    "27 1/6 in": (6, TAPE),
    "1/10": (3, TAPE),
    "1/128": (3, TAPE),
    "1/1": (3, TAPE),
    "⅕ in": (1, TAPE),
    "27⅙": (3, TAPE),
    "⅟2": (1, TAPE),
    "↉": (1, TAPE),
    "": (1, EMPTY),
    "   ": (1, EMPTY),
    "\t\n": (1, EMPTY),
    "about 27": (1, VAGUE),
    "27 in approx": (7, VAGUE),
    "~27": (1, VAGUE),
    "27 ±1": (4, VAGUE),
    "1 in 2 cm": (8, MIXED),
    "1 m 2 ft": (7, MIXED),
    "4 in 1 yd": (8, ORDER),
    "4 in 5 in": (8, ORDER),
    "5' 5' 4\"": (5, ORDER),
    "20 cm 1 m": (9, ORDER),
    "5'4": (3, BARE_LAST),
    "1 m 20": (5, BARE_LAST),
    "27 28": (4, TWO),
    "2 7 in": (3, TWO),
    "27 1/2 5/8": (8, TWO),
    "½½": (2, TWO),
    "½27": (2, TWO),
    "27.5 1/2": (6, TWO),
    "27 1 / 2": (4, TWO),
    "5 ft 14 in": (6, CARRY),
    "1 yd 36 in": (6, CARRY),
    "1 m 100 cm": (5, CARRY),
    "1.5 yd 4 in": (1, EARLY_FRACTION),
    "1/2 ft 4 in": (1, EARLY_FRACTION),
    "nan": (1, NOT_NUMBER),
    "NaN in": (1, NOT_NUMBER),
    "inf": (1, NOT_NUMBER),
    "infinity": (1, NOT_NUMBER),
    "1e5": (2, ("power of ten", "write the number out")),
    "1E-5 in": (2, ("power of ten", "write the number out")),
    "0x1F": (2, WORD),
    "1_000": (2, ("no place here", "27 1/2 in")),
    "２７ in": (1, DIGIT),
    "27² in": (3, DIGIT),
    "٢٧": (1, DIGIT),
    "二": (1, DIGIT),
    "27 incheſ": (4, ("no unit here", "did you mean 'inches'?")),
    "27 İn": (4, ("no place here", "27 1/2 in")),
    "27 cм": (4, WORD),
    "27 inhces": (4, ("no unit here", "did you mean 'inches'?")),
    "27 in wide": (7, WORD),
    "in": (1, NO_NUMBER),
    "in 27": (1, NO_NUMBER),
    '"27': (1, NO_NUMBER),
    "27''": (4, NO_NUMBER),
    "27 in in": (7, NO_NUMBER),
    "1.2.3": (4, POINT),
    "1 yd.5 in": (5, POINT),
    "27½.5": (4, POINT),
    "27.": (3, STOP),
    "27..5": (3, STOP),
    "70 cm.": (6, STOP),
    "27 in .": (7, STOP),
    "27,": (3, STOP),
    ".": (1, STOP),
    "1/2/3": (4, SLASH),
    "1.5/2": (4, SLASH),
    "/2": (1, SLASH),
    "1/": (2, SLASH),
    "27+1": (3, ("plus sign", "1 yd 4 in")),
    "+27": (1, ("plus sign", "1 yd 4 in")),
    "27*2": (3, ("no place here", "27 1/2 in")),
    "27\x00in": (3, HIDDEN),
    "27\n1/2": (3, HIDDEN),
    "27\u202e1": (3, HIDDEN),
    "27\u200bin": (3, HIDDEN),
    "2" + "7" * 60: (61, ("more than 60 characters", "type one value")),
    "x" * 100_000: (61, ("more than 60 characters", "type one value")),
    "1" * 60: (1, LONG),
    "10.001 m": (1, ("longer than it can be", "accepted here: 0 in to 393 11/16 in")),
    "1000000": (1, ("longer than it can be", "a bare number counts as inches")),
}


@pytest.mark.parametrize(("text", "told"), REFUSED.items(), ids=[ascii(text)[:30] for text in REFUSED])
def test_refuses(text: str, told: tuple[int, tuple[str, str]]) -> None:
    column, (problem, hint) = told
    with pytest.raises(ReadingError) as caught:
        read_length(text, unit="in")
    assert problem in caught.value.what
    assert hint in caught.value.hint
    assert caught.value.column == column
    assert caught.value.where == f"length, character {column}"


@pytest.mark.parametrize(
    ("unit", "hint"),
    [
        ("in", "accepted here: 19 3/4 in to 59 1/16 in; a bare number counts as inches"),
        ("cm", "accepted here: 50.1 cm to 150 cm; a bare number counts as centimeters"),
        ("mm", "accepted here: 501 mm to 1500 mm; a bare number counts as millimeters"),
    ],
)
def test_the_allowed_range_is_told_in_marks_that_are_inside_it(unit: str, hint: str) -> None:
    # 500.5 mm is 315.3 sixteenths of an inch and 1500.4 mm is 945.1: inside lie 316/16 and 945/16 in.
    for text, side in (("1", "shorter"), ("9999", "longer")):
        with pytest.raises(ReadingError) as caught:
            read_length(text, unit=unit, least=F("500.5"), most=F("1500.4"), what="waist")  # type: ignore[arg-type]
        assert caught.value.what == f"{side} than it can be"
        assert caught.value.where == "waist, character 1"
        assert caught.value.hint == hint


def test_a_range_narrower_than_a_mark_still_reads_as_a_range() -> None:
    with pytest.raises(ReadingError) as caught:
        read_length("1 cm", unit="cm", least=F("10.2"), most=F("10.4"))
    assert caught.value.hint == "accepted here: 1 cm to 1 cm"


def test_the_whole_message_shows_text_caret_and_hint() -> None:
    with pytest.raises(LengthError) as caught:
        read_length("27 inhces", unit="in", what="hem width")
    assert str(caught.value).split("\n") == [
        "hem width, character 4: a word that is no unit here",
        "  27 inhces",
        "     ^",
        "  did you mean 'inches'?",
    ]


@pytest.mark.parametrize(
    ("text", "shown", "caret"),
    [
        ("27 \x1b[31min", "27 \ufffd[31min", "   ^"),
        ("\x07" * 3, "\ufffd" * 3, "^"),
        ("27\u202e1\n", "27\ufffd1\ufffd", "  ^"),
        ("x\x9b", "x\ufffd", "^"),
        ("2" * 70, "2" * 60 + "...", " " * 60 + "^"),
        ("27\u3000２", "27\ufffd２", "  ^"),
        ("27 in ２", "27 in ２", "      ^"),
    ],
)
def test_the_picture_is_safe_to_print(text: str, shown: str, caret: str) -> None:
    with pytest.raises(ReadingError) as caught:
        read_length(text, unit="in")
    assert caught.value.picture.split("\n") == [shown, caret]
    assert not any(unicodedata.category(char) in ("Cc", "Cf") for char in str(caught.value).replace("\n", ""))


def test_the_caret_counts_terminal_cells() -> None:
    error = ReadingError("x", text="２e\u0301?", column=4)
    assert error.picture.split("\n")[1] == "   ^"  # two cells, one cell, a combining mark of none


@pytest.mark.parametrize("text", ["83-84 in", "83 1/7 in", "8383 in", "83 wide", "-83", "83,083 cm"])
def test_only_the_picture_repeats_what_was_typed(text: str) -> None:
    with pytest.raises(ReadingError) as caught:
        read_length(text, unit="in", what="waist")
    assert "83" not in caught.value.what + caught.value.where + caught.value.hint
    assert "83" in caught.value.picture


def test_a_refusal_crosses_between_processes() -> None:
    with pytest.raises(ReadingError) as caught:
        read_length("27 to 28", unit="in")
    for other in (pickle.loads(pickle.dumps(caught.value)), copy.copy(caught.value)):
        assert str(other) == str(caught.value)
        assert other.column == 4
