"""Run-outs, quarters, rise bands and gussets agree with cloth drawn on paper."""

import math

import pytest
from figure_oracles import ORACLES, Draw, across, oracle, solve, span, wedge
from shapely import Polygon, box
from test_figures_oracles import as_float, close
from worked_numbers import reckon, worked

from advisor.figures import inches
from advisor.figures.fitting import GUSSET_SIDE, gusset_length, quarter, rise_band, run_out
from advisor.figures.formula import FigureError

INCH_MM = 25.4


@oracle(run_out, lambda d: {"each_side": d.inch(0, 3)})
def run_by_slope(each_side):
    """The first depth at which a line 1/10 off the vertical has come back, kept between high hip and hip."""
    clipped = [depth for depth in (5 * INCH_MM, each_side / math.tan(math.atan(0.1))) if depth <= 8 * INCH_MM]
    return max(clipped) if len(clipped) == 2 else 8 * INCH_MM


@oracle(quarter, lambda d: {"round": d.inch(16, 80)})
def folded_twice(round):
    strip = box(0, 0, round, 1)
    for _ in range(2):
        strip = box(0, 0, (strip.bounds[2] - strip.bounds[0]) / 2, 1)
    return strip.area


@oracle(rise_band, lambda d: {"short": d.inch(0, 8)})
def band_found(short):
    """The depth at which a loop drawn with a band in front and behind has gained what it lacks."""

    def gained(depth):
        return 2 * (1000 + depth) - 2 * 1000

    return solve(gained, short, high=500)


@oracle(gusset_length, lambda d: {"side": d.inch(3, 10), "width": d.inch("1/8", 5)}, within=0.00101)
def diamond(side, width):
    """The length at which the sides of a drawn diamond are as long as the inseam was opened."""

    def around(length):
        points = [(-length / 2, 0), (0, width / 2), (length / 2, 0), (0, -width / 2)]
        return Polygon(points).exterior.length / 4

    return solve(around, side, high=2000)


OURS = [held for held in ORACLES if held.formula.id.startswith("fitting.")]


@pytest.mark.parametrize("held", OURS, ids=lambda held: held.formula.id)
def test_agrees_with_a_drawing(held) -> None:
    draw = Draw(held.formula.id)
    for _ in range(25):
        inputs = held.draw(draw)
        theirs = held.answer(**{name: as_float(held, name, given) for name, given in inputs.items()})
        assert close(held.formula(**inputs), theirs, held.within), inputs


@pytest.mark.parametrize("held", OURS, ids=lambda held: held.formula.id)
def test_words_and_worked_number_agree(held) -> None:
    inputs, answer = worked(held.formula)
    assert held.formula(**inputs) == answer
    assert abs(reckon(held.formula.words, inputs) - answer) <= 1e-3


def test_a_run_out_stays_between_high_hip_and_hip() -> None:
    # Common practice, no source: 5 in for every 1/2 in of depth, or the line dents.
    assert run_out(inches("1/2")) == inches(5)
    assert run_out(inches("1/8")) == inches(5)
    assert run_out(inches("3/4")) == inches("7 1/2")
    assert run_out(inches(2)) == inches(8)


def test_a_gusset_gains_its_middle_width() -> None:
    # The loop runs across the middle of the diamond: what lies on that line is what it gains.
    length = float(gusset_length(GUSSET_SIDE, inches(2)))
    half = wedge(50.8, length / 2)
    assert span(half.intersection(across(-1e-9))) == pytest.approx(50.8, abs=1e-3)
    assert half.length == pytest.approx(50.8 + 2 * 6 * INCH_MM, abs=1e-2)


@pytest.mark.parametrize(("side", "width"), [("2", "4"), ("2", "5")])
def test_a_gusset_wider_than_its_sides_is_refused(side: str, width: str) -> None:
    with pytest.raises(FigureError, match="wider than its sides"):
        gusset_length(inches(side), inches(width))
