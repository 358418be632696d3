"""Gussets and seams let out at a crotch agree with a seam drawn from front to back."""

import pytest
from figure_oracles import ORACLES, Draw, oracle, solve
from shapely import LineString
from test_figures_oracles import as_float, close

from advisor.figures import inches
from advisor.figures.lower import gusset_width, points_give


def front_to_back(depth: float) -> float:
    """Length of a seam that goes straight down the front, and up the back again."""
    return LineString([(0, depth), (0, 0), (0, depth)]).length


@oracle(gusset_width, lambda d: {"deeper": d.inch(0, 4)})
def cloth_let_in(deeper):
    """The width of cloth that makes the seam of a crotch as long as that of a deeper one."""
    return solve(lambda width: front_to_back(250) + width, front_to_back(250 + deeper), high=500)


@oracle(points_give, lambda d: {"allowance": d.inch(0, 3), "keep": d.inch("1/4", "1/2")})
def both_points_out(allowance, keep):
    """The depth at which a seam is as long as one whose two points have moved out into the allowances."""
    if allowance <= keep:
        return 0.0
    longer = front_to_back(250) + LineString([(keep, 0), (allowance, 0)]).length * 2
    return solve(lambda deeper: front_to_back(250 + deeper), longer, high=500)


OURS = [held for held in ORACLES if held.formula.id.startswith("lower.")]


@pytest.mark.parametrize("held", OURS, ids=lambda held: held.formula.id)
def test_agrees_with_a_drawing(held) -> None:
    draw = Draw(held.formula.id)
    for _ in range(25):
        inputs = held.draw(draw)
        theirs = held.answer(**{name: as_float(held, name, given) for name, given in inputs.items()})
        assert close(held.formula(**inputs), theirs, held.within), inputs


def test_a_seam_that_holds_no_more_than_must_stay_gives_nothing() -> None:
    assert points_give(inches("3/8"), inches("3/8")) == 0
    assert points_give(inches("1/4"), inches("3/8")) == 0
