"""The short cut the checks take comes to the same plan as the advice a person gets."""

from dataclasses import replace
from pathlib import Path

import pytest

from advisor.advise.plan import make_plan, open_problems
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.check.drafting import draft_plan
from advisor.rulebase.base import the_base
from advisor.rulebase.locate import rules_folder

CASES = sorted((rules_folder().parent / "cases").glob("*.toml"))[::4]


@pytest.mark.parametrize("path", CASES, ids=[path.stem for path in CASES])
def test_a_draft_is_the_plan_without_its_words(path: Path) -> None:
    base = the_base()
    case = read_case(path, {id: garment.questions for id, garment in base.garments.items()}).case
    world = world_of(case, base.garments[case.garment])
    plan = make_plan(base, world, case.choices, case.limits)
    draft = draft_plan(base, world, case.choices, case.limits, lambda model: open_problems(base, model))
    assert plan.steps
    told = replace(plan, advice=draft.advice, materials=draft.materials, remains=draft.remains)
    assert draft == told
    assert [f.id for f in draft.remains] == [f.id for f in plan.remains]
    assert [(f.id, f.amount) for f in draft.advice.findings] == [(f.id, f.amount) for f in plan.advice.findings]
    assert [(o.id, o.open) for o in draft.advice.options] == [(o.id, o.open) for o in plan.advice.options]
    assert draft.advice.choices == plan.advice.choices
