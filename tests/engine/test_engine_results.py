"""What a run answers: total order, every fact justified, nothing changeable, no memory kept.

Checked against the definitions in the docstrings, on random rule sets (`engine_fuzz`) and worked examples.
"""

from __future__ import annotations

import copy
import gc
import os
import pickle
import tracemalloc
from fractions import Fraction

import pytest
from engine_fuzz import Maker, spec
from engine_words import A, Answer, B, Made, Measure, rule

from advisor.engine import AS, MATCH, OR, Engine, P, RuleSpec

CASES = int(os.environ.get("ENGINE_MEMORY_CASES", "2000"))


@pytest.mark.parametrize("number", range(20))
def test_the_order_of_facts_and_rules_given_changes_nothing(number: int) -> None:
    maker = Maker(f"order {number}")
    rules, facts = [spec(each) for each in maker.rule_set(12)], maker.facts(14)
    run = Engine(rules).run(facts)
    maker.random.shuffle(rules)
    maker.random.shuffle(facts)
    again = Engine(rules).run(facts)
    assert (again.facts, again.firings) == (run.facts, run.firings)
    assert list(run.facts) == sorted(run.facts, key=lambda fact: (type(fact).__name__, fact.g, fact.k, fact.n))


@pytest.mark.parametrize("number", range(20))
def test_every_derived_fact_is_justified_by_facts_of_the_run(number: int) -> None:
    maker = Maker(f"why {number}")
    rules, facts = {each.name: spec(each) for each in maker.rule_set(12)}, maker.facts(14)
    run = Engine(list(rules.values())).run(facts)
    for fact in run.facts:
        assert run.justifications(fact) or fact in facts
        for firing in run.justifications(fact):
            assert fact in firing.conclusions and set(firing.premises) <= set(run.facts)
            asked = rules[firing.rule].action.__code__.co_varnames
            assert rules[firing.rule].action(**{name: firing.bindings[name] for name in asked}) == fact


@pytest.mark.parametrize("number", range(20))
def test_without_records_the_facts_are_the_same(number: int) -> None:
    maker = Maker(f"bare {number}")
    rules, facts = [spec(each) for each in maker.rule_set(12)], maker.facts(14)
    bare = Engine(rules, record=False).run(facts)
    assert bare.facts == Engine(rules).run(facts).facts and bare.firings == ()


def test_a_firing_tells_premises_in_order_all_names_and_conclusions_once() -> None:
    made = Made(by="r", v=3)
    both = RuleSpec("r", 1, (AS.one << B(v=MATCH.w), A(v=MATCH.v)), lambda v, w: [made, Made(by="r", v=v + w)])
    (firing,) = Engine([both]).run([A(v=1), B(v=2)]).firings
    assert firing.premises == (B(v=2), A(v=1))
    assert dict(firing.bindings) == {"one": B(v=2), "w": 2, "v": 1}
    assert firing.conclusions == (made,)
    with pytest.raises(TypeError):
        firing.bindings["w"] = 3  # type: ignore[index]


def test_branches_of_or_with_other_classes_are_ordered() -> None:
    either = rule("r", OR(A(), Measure(), Answer(), B()))
    run = Engine([either]).run([A(v=1), Measure(key="hem", mm=1), Answer(name="x", word="no"), B(v=1), B(v=2)])
    assert [type(f.premises[0]).__name__ for f in run.firings] == ["A", "Answer", "B", "B", "Measure"]


def test_facts_with_and_without_an_optional_slot_are_ordered() -> None:
    bare, noted = Answer(name="x", word="no"), Answer(name="x", word="no", note="a")
    found = Engine([rule("r", Answer())]).run([noted, bare]).of(Answer)
    assert found == (bare, noted)


def test_a_run_and_its_parts_cannot_be_changed() -> None:
    run = Engine([rule("r", A())]).run([A(v=1)])
    for name in ("facts", "firings", "revoked", "extra"):
        with pytest.raises(AttributeError):
            setattr(run, name, ())
    with pytest.raises(AttributeError):
        del run.facts
    assert hash(run) == hash(Engine([rule("r", A())]).run([A(v=1)]))


def test_facts_survive_copying_and_pickling() -> None:
    fact = Measure(key="hem", mm=Fraction(1, 3))
    assert copy.deepcopy(fact) == pickle.loads(pickle.dumps(fact)) == fact.copy() == fact
    assert type(copy.copy(fact).mm) is Fraction
    assert fact != Measure(key="hem", mm=Fraction(1, 2)) and len({fact, fact.copy()}) == 1


def test_rules_on_other_classes_or_literals_are_not_looked_at() -> None:
    """A counted test: a rule whose literals no fact has must cost nothing per case."""
    asked: list[str] = []

    def unrelated(number: int) -> RuleSpec:
        look = P(lambda note: asked.append(note) is None)
        return rule(f"u{number}", Answer(name=f"other {number}", note=look), Answer(name=f"more {number}"))

    rules = [rule("r", Answer(name="lined")), *(unrelated(number) for number in range(50))]
    engine = Engine(rules)
    session = engine.session([Answer(name="lined", word="yes", note="n"), A(v=1)])
    matcher = session._engine.matcher
    assert asked == [] and len(session.result().firings) == 1
    assert sum(map(bool, matcher._memory)) == 1 and len(matcher._matches) == 1


def test_memory_stays_flat_over_many_cases() -> None:
    """ENGINE_MEMORY_CASES=100000 takes the full hundred thousand."""
    maker = Maker("memory")
    engine = Engine([spec(each) for each in maker.rule_set(8)])
    for _ in range(50):
        assert engine.run(maker.facts(6)).facts
    held = []
    tracemalloc.start()
    for _ in range(3):
        for _ in range(CASES // 3):
            assert engine.run(maker.facts(6)).facts
        gc.collect()
        held.append(tracemalloc.get_traced_memory()[0])
    tracemalloc.stop()
    # One case kept in a thousand would be several kilobytes more.
    assert held[2] - held[1] < 2_000, held
