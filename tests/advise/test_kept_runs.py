"""A run that is changed from garment to garment says what a run from nothing says: facts, reasons and their order.

The yardstick is the engine's own run on the whole garment, which other tests hold against CLIPS and stock experta.
"""

import random
from collections.abc import Iterator

import pytest

from advisor.advise import lookahead, stages
from advisor.advise.advise import forget
from advisor.advise.follow import follow
from advisor.core.model import Model
from advisor.engine import Run
from tests.advise.advise_worlds import BASE, CASES, world
from tests.some_cases import some


@pytest.fixture
def looked(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[lookahead.At]]:
    """Every look of a pass is held against a run from nothing; the places where it was looked, in order."""
    seen: list[lookahead.At] = []

    def look(base: object, at: lookahead.At, model: Model, before: lookahead.At | None = None) -> Run:
        changed = lookahead.look(BASE, at, model, before)
        fresh = lookahead.run_on(BASE, model)
        assert changed.facts == fresh.facts
        for fact in fresh.facts:
            assert changed.justifications(fact) == fresh.justifications(fact)
            assert changed.concluded_by(fact) == fresh.concluded_by(fact)
        assert changed.firings == fresh.firings
        # Nothing was concluded and taken back: what a NOT looks at is settled before it is asked.
        assert fresh.revoked == ()
        seen.append(at)
        return changed

    monkeypatch.setattr(stages, "look", look)
    lookahead._desk.runs.clear()
    forget()
    yield seen
    forget()


@pytest.mark.parametrize("name", some(sorted(CASES), 5))
def test_worlds_of_one_case(name: str, looked: list[lookahead.At]) -> None:
    case, pick = CASES[name], random.Random(name)
    for keys in (0, 1, 1, 2, 6, 20):
        follow(BASE, world(case, keys, pick), case.choices, case.limits, told=False)
    assert len(looked) >= 6 and {after for _, after in looked} > {stages.START}


def test_worlds_of_all_cases_in_turn(looked: list[lookahead.At], monkeypatch: pytest.MonkeyPatch) -> None:
    # So few runs kept that most are lost before they are wanted again.
    monkeypatch.setattr(lookahead, "KEPT", 7)
    pick = random.Random(1)
    for case in pick.sample(list(CASES.values()), len(CASES)):
        follow(BASE, world(case, pick.choice((0, 1, 3)), pick), case.choices, case.limits, told=False)
    assert len(looked) > len(CASES) and len(lookahead._desk.runs) == 7


def test_a_twin_leaves_the_run_it_comes_from_alone() -> None:
    case, pick = CASES["coachman"], random.Random(2)
    one, other = (world(case, keys, pick).model for keys in (0, 5))
    picture = lookahead.Picture(BASE.read)
    picture.turn(one)
    session = BASE.engine.session(picture.facts)
    turned = picture.twin()
    gone, come = turned.turn(other)
    assert gone and come
    assert session.twin().change(gone, come) == lookahead.run_on(BASE, other)
    assert session.result() == lookahead.run_on(BASE, one)
    # And the first can still go the same way itself.
    assert session.change(*picture.turn(other)) == lookahead.run_on(BASE, other)
