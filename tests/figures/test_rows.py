"""Rows of fastenings: each number against cloth laid out or counted, and the refusals."""

import pytest
from figure_oracles import DRAWN, ORACLES, Draw, oracle, path, solve, span, strip
from shapely import Point, box

from advisor.figures import FigureError, inches, rows


@oracle(rows.last_down, lambda d: {"run": d.inch(4, 40)})
def end_left_free(run):
    """Where the distance still to go along the laid-out opening is an inch."""
    edge = strip(0, run)
    return solve(lambda down: -edge.intersection(strip(down, run)).length, -25.4, 0, run)


def neighbors(d: Draw):
    upper = d.inch("1/2", 20)
    return {"upper": upper, "lower": upper + d.inch("1/2", 6)}


@oracle(rows.gap, neighbors)
def laid_out(upper, lower):
    return Point(0, upper).distance(Point(0, lower))


def opening(d: Draw):
    waist = d.inch(8, 20)
    return {"opening": waist + d.inch(4, 12), "to_waist": waist}


@oracle(rows.fly_part, opening)
def below_the_waist(opening, to_waist):
    return strip(0, opening).difference(strip(0, to_waist)).length


@oracle(rows.lap_crosswise, lambda d: {"start": d.inch("1/4", 1), "hole": d.inch("1/2", 2)})
def covered_by_the_lap(start, hole):
    return span(path((start, 0), (hole, 0)))


@oracle(rows.lap_upright, lambda d: {"diameter": d.inch("1/4", "1 1/2")})
def button_grown_by_a_quarter(diameter):
    """The button, and a quarter of it free to either side."""
    half = diameter / 2
    west, _, east, _ = box(-half, -half, half, half).buffer(half / 2, join_style="mitre").bounds
    return east - west


OURS = [held for held in ORACLES if held.formula.id.startswith("rows.")]


@pytest.mark.parametrize("held", OURS, ids=lambda held: held.formula.id)
def test_agrees_with_cloth_laid_out(held) -> None:
    draw = Draw(held.formula.id)
    for _ in range(8):
        inputs = held.draw(draw)
        theirs = held.answer(**{name: float(given) for name, given in inputs.items()})
        assert abs(float(held.formula(**inputs)) - theirs) <= max(held.within, DRAWN)


def test_all_of_the_module_is_held() -> None:
    assert {held.formula.id for held in OURS} == {
        "rows.last_down", "rows.gap", "rows.fly_part", "rows.lap_crosswise", "rows.lap_upright",
    }  # fmt: skip


def test_what_cannot_be_is_refused() -> None:
    with pytest.raises(FigureError, match="too short for a row"):
        rows.last_down(inches(1))
    with pytest.raises(FigureError, match="not in order"):
        rows.gap(inches(7), inches(6))
    with pytest.raises(FigureError, match="at or above the waist"):
        rows.fly_part(inches(14), inches(14))


def test_a_worked_front() -> None:
    """20 1/2 in with the waist 14 in down: 6 1/2 in of fly, the last button 19 1/2 in down (worked by hand)."""
    assert rows.fly_part(inches("20 1/2"), inches(14)) == inches("6 1/2")
    assert rows.last_down(inches("20 1/2")) == inches("19 1/2")
    # A 3/4 in button: begun 1/2 in from the edge, the hole of 7/8 in ends 1 3/8 in from it.
    assert rows.lap_crosswise(inches("1/2"), inches("7/8")) == inches("1 3/8")
    assert rows.lap_upright(inches("3/4")) == inches("1 1/8")
