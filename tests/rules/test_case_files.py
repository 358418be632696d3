"""The worked cases of cases/: each reads, each has a plan, and the plan says what the case is there to show."""

from functools import cache
from pathlib import Path

import pytest

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.core.advice import Plan
from advisor.core.case import Unknown
from tests.rules.mutate import base

CASES = Path(__file__).parents[2] / "cases"
NAMES = sorted(path.stem for path in CASES.glob("*.toml"))


@cache
def opened(name: str) -> Plan:
    """The plan of one case file."""
    case = read_case(CASES / f"{name}.toml", base().questions()).case
    return make_plan(base(), world_of(case, base().garment(case.garment)), case.choices, case.limits)


def steps(plan: Plan) -> list[str]:
    """The ids of the steps in order."""
    return [step.op.id for step in plan.steps]


@pytest.mark.parametrize("name", NAMES)
def test_a_case_reads_and_its_plan_can_be_done(name: str) -> None:
    plan = opened(name)
    assert plan.advice.findings, "a case shows something"
    assert plan.blocked == ()
    assert plan.advice.idle == (), "a choice whose finding is not there"


def test_the_moth_queen_gets_new_flaps_a_higher_waist_and_closes_what_that_opens() -> None:
    plan = opened("moth_queen")
    problems = {finding.id for finding in plan.advice.findings}
    assert {"metal_unwanted@snaps", "holes_open@snaps", "waist_low@bodice", "too_wide@trousers"} <= problems
    assert "topstitch snaps.flap" in steps(plan)
    assert plan.remains == ()


def test_the_lamplighter_is_aired_freed_of_rust_and_washed_in_that_order() -> None:
    plan = opened("lamplighter")
    ids = steps(plan)
    first = ["air cloth.store", "take off snaps.state", "rinse snaps.marks", "wash cloth.washed", "measure cloth.ready"]
    assert [id for id in ids if id in first] == first
    assert plan.totals.difficulty <= 3, "within the limits of the case"
    assert plan.remains == ()


def test_the_ferryman_answers_i_cannot_say() -> None:
    case = read_case(CASES / "ferryman.toml", base().questions()).case
    unknown = {key for key, answer in case.answers.items() if isinstance(answer, Unknown)}
    assert unknown == {"waist.pinned", "trunk.body", "front.opening"}


def test_a_childs_sleepwear_is_not_altered() -> None:
    plan = opened("night_watch_child")
    assert steps(plan) == ["hand over cloth.fate"]
    assert all(not o.open for o in plan.advice.options if o.fix not in ("general.fixes.leave", "cloth.fixes.hand_over"))


def test_the_imp_loses_the_cord_of_the_hood() -> None:
    ids = steps(opened("chimney_imp"))
    assert "take out cloth.cords" in ids and "pull wearer.parts" in ids


def test_the_old_harlequin_is_copied_and_not_sewn_on() -> None:
    assert steps(opened("old_harlequin")) == ["copy cloth.fate"]
