"""Operations that wait for each other: the fault names the fixes whose work makes the loop."""

from dataclasses import replace
from pathlib import Path

import pytest

from advisor.advise import plan
from advisor.advise.advise import advise
from advisor.advise.follow import Followed
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.core.advice import Advice
from advisor.errors import KnowledgeError
from advisor.rulebase.base import the_base

CASE = Path(__file__).parents[2] / "cases" / "tower_guard.toml"


def looped(advice: Advice) -> Advice:
    """The same advice with the first operations of two fixes made to need each other."""
    one, *_, other = (option for option in advice.chosen() if option.work.ops)
    a, b = one.work.ops[0], other.work.ops[0]
    assert a.id != b.id
    needs = {a.id: (b.id,), b.id: (a.id,)}
    options = tuple(
        replace(o, work=replace(o.work, ops=tuple(replace(op, needs=needs.get(op.id, op.needs)) for op in o.work.ops)))
        for o in advice.options
    )
    return replace(advice, options=options)


def test_a_loop_is_told_by_the_fixes_that_make_it(monkeypatch: pytest.MonkeyPatch) -> None:
    base = the_base()
    case = read_case(CASE, base.questions()).case
    world = world_of(case, base.garment(case.garment))
    advice = looped(advise(base, world, {}, case.limits, fill=True))
    monkeypatch.setattr(plan, "follow", lambda *args, **more: Followed(advice, advice.suggested))
    with pytest.raises(KnowledgeError) as told:
        plan.make_plan(base, world, {}, case.limits)
    one, *_, other = (option for option in advice.chosen() if option.work.ops)
    assert one.title in str(told.value) and other.title in str(told.value)
    assert one.work.ops[0].id in str(told.value) and "choose another fix" in str(told.value)
