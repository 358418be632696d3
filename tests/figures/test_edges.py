"""Edges that must agree: the formulas beside their oracles, and the word tables beside the published rows."""

from fractions import Fraction

import oracle_edges
import pytest

from advisor.figures.edges import DART_WORD, TAKE_UP_WORD, dart_most, drawn_fullness, fastenings, fullest, take_up, zone
from advisor.figures.exact import inches
from advisor.figures.gathers import zone_fullness

assert oracle_edges


def test_a_quarter_of_eleven_into_nine_is_one_and_a_half_over_four() -> None:
    # Common practice, no source: fullness is judged in the zone, not over the quarter (11 / 9 is 1.22).
    excess = inches(11) - inches(9)
    drawn = zone(excess, inches(6))
    assert drawn == inches(4)
    assert zone_fullness(excess, drawn) == Fraction(3, 2)


@pytest.mark.parametrize(
    "kind, least, most",
    [("wool", 8, 10), ("cotton", 4, 5), ("polyester", 2, 3), ("coated", 0, 1)],  # percent, from memory
)
def test_take_up_without_puckers(kind: str, least: int, most: int) -> None:
    assert take_up(kind, most=False) == Fraction(least, 100)
    assert take_up(kind, most=True) == Fraction(most, 100)


def test_fullness_falls_as_cloth_gets_heavier() -> None:
    # PUNTADAS: sheer and light 3 to 4, medium 2, heavy 1.5; NEWDRESS-RU: very soft 3, a little body 2.
    assert [fullest(weight) for weight in ("light", "medium", "heavy")] == [3, 2, Fraction(3, 2)]


def test_every_kind_of_cloth_is_in_both_tables() -> None:
    assert set(TAKE_UP_WORD) == set(DART_WORD)
    assert take_up("felt", most=True) == take_up("polyester", most=True)


def test_a_dart_without_room_takes_nothing() -> None:
    assert dart_most("cotton", inches(0)) == 0
    assert dart_most("cotton", inches(5)) == inches(1)  # 1 : 5 in crisp cotton, from memory
    assert drawn_fullness(inches(8), "round", inches(0)) == 1
    for excess, where in ((8, "round"), (4, "back")):
        assert drawn_fullness(inches(excess), where, inches(6)) == Fraction(3, 2)


def test_a_slit_of_seven_inches_takes_one_fastening() -> None:
    assert fastenings(inches(7)) == 1
    assert fastenings(inches(8) + inches("1/16")) == 2
