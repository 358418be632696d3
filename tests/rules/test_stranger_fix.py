"""The fastening of a waistband moved over: it closes what it says, every slip is noticed, and where it is offered."""

import pytest

from advisor.figures.exact import inches
from advisor.lengths import METRIC_TAPE
from tests.rules.mutate import Worked, closes, notices, plan_for, worked

FIX = "girth.fixes.move_closing"
WIDE = "too_wide@trousers"


def moved(pinned: str, tape: str = "in") -> Worked:
    return worked({"waist.pinned": pinned}, WIDE, FIX, garment="trousers", tape=tape)


@pytest.mark.parametrize("pinned", ["1/16 in", "1/2 in", "11/16 in", "3/4 in"])
def test_it_closes_and_leaves_nothing(pinned: str) -> None:
    closes(moved(pinned))


def test_every_slip_is_noticed() -> None:
    # One operation with two measures: left out, and each measure a mark less and a mark more.
    assert notices(moved("1/2 in")) == 5


def test_on_the_metric_tape_too() -> None:
    work = moved("14 mm", "cm")
    assert work.world.tape == METRIC_TAPE
    closes(work)
    assert notices(work) == 5


def test_edge_and_band_come_in_by_what_was_pinned() -> None:
    # By hand: 36 in round less 1/2 in is 35 1/2 in, and the band sewn to it must stay as long as it is.
    work = moved("1/2 in")
    after = work.plan.advice.model.measures
    assert after["trousers.edge"] == after["band.edge"] == inches("35 1/2")


def test_past_three_quarters_of_an_inch_it_is_ruled_out() -> None:
    # Common practice, no source: 3/4 in is the most a lap takes up.
    option = moved("13/16 in").option
    assert [ruling.rule for ruling in option.rulings] == ["girth.vetoes.move_closing_limit"]
    assert moved("3/4 in").option.open


def offered(answers: dict[str, str], garment: str) -> bool:
    return any(option.fix == FIX for option in plan_for(answers, garment=garment).advice.options)


def test_it_is_offered_only_where_a_band_ends_in_a_lap() -> None:
    assert offered({"waist.pinned": "1/2 in"}, "trousers")
    assert not offered({"waist.pinned": "1/2 in", "band.kind": "none"}, "trousers")
    assert not offered({"waist.pinned": "1/2 in", "band.kind": "separate"}, "one_piece")


def test_the_lap_is_told_in_the_step() -> None:
    steps = [step.op for step in moved("1/2 in").plan.steps]
    assert [op.id for op in steps] == ["move band.closing"]
    assert steps[0].figures["total"].value == inches("1/2")
