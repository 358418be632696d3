"""Why a rule did not fire: worked examples, and agreement with the engine on random rule sets.

The agreement: a rule that fired has a solution for every condition; one that did not names a condition
that, when taken away with all after it, leaves a rule that fires.
"""

from __future__ import annotations

import pytest
from engine_fuzz import Maker, spec
from engine_words import A, Answer, B, C, Made, Measure, rule

from advisor.engine import (
    EXISTS,
    FORALL,
    MATCH,
    NOT,
    OR,
    TEST,
    Engine,
    L,
    P,
    RuleSpec,
    SlotMiss,
    why_not,
)

DEEP = P(lambda mm: mm >= 45)
LET_DOWN = rule(
    "let_down",
    Measure(key="hem", mm=MATCH.hem & DEEP),
    Answer(name="lined", word=L("no") | L("unsure")),
    NOT(Answer(name="faded line", word="yes")),
)


def test_a_predicate_that_says_no_names_the_slot_and_the_value() -> None:
    found = why_not(LET_DOWN, [Measure(key="hem", mm=30), Measure(key="waist", mm=700)])
    assert (found.index, found.kind, found.condition) == (0, "pattern", LET_DOWN.conditions[0])
    near, far = found.misses
    assert near.fact.key == "hem"
    (miss,) = near.slots
    assert (miss.slot, miss.wanted, miss.seen, miss.reason) == ("mm", (), 30, "test")
    assert miss.test is DEEP
    assert far.slots == (SlotMiss("key", ("hem",), "waist", "literal"),)


def test_no_fact_of_the_class_at_all() -> None:
    found = why_not(LET_DOWN, [])
    assert (found.index, found.misses, found.blockers) == (0, (), ())


def test_a_choice_of_literals_is_listed() -> None:
    found = why_not(LET_DOWN, [Measure(key="hem", mm=50), Answer(name="lined", word="yes")])
    assert found.index == 1
    (miss,) = found.misses[0].slots
    assert (miss.slot, miss.wanted, miss.seen) == ("word", ("no", "unsure"), "yes")
    assert [dict(each) for each in found.bindings] == [{"hem": 50}]


def test_what_a_not_found_is_named() -> None:
    blocker = Answer(name="faded line", word="yes")
    facts = [Measure(key="hem", mm=50), Answer(name="lined", word="no"), blocker]
    found = why_not(LET_DOWN, facts)
    assert (found.index, found.kind, found.blockers) == (2, "not", (blocker,))
    assert why_not(LET_DOWN, facts[:2]).holds


def test_a_name_bound_to_other_values_lists_them() -> None:
    pair = RuleSpec("pair", 1, (A(v=MATCH.v), B(v=MATCH.v)), lambda v: None)
    found = why_not(pair, [A(v=1), A(v=2), B(v=3)])
    assert found.index == 1
    assert found.misses[0].slots == (SlotMiss("v", (1, 2), 3, "bound"),)


def test_a_value_that_must_differ_and_a_slot_left_out() -> None:
    other = RuleSpec("other", 1, (A(v=MATCH.v), B(v=~MATCH.v)), lambda v: None)
    assert why_not(other, [A(v=1), B(v=1)]).misses[0].slots == (SlotMiss("v", (), 1, "differs"),)
    noted = rule("noted", Answer(name="lined", note=MATCH.n))
    bare = Answer(name="lined", word="yes")
    assert why_not(noted, [bare]).misses[0].slots == (SlotMiss("note", (), None, "absent"),)


def test_a_test_shows_what_was_bound() -> None:
    larger = RuleSpec("larger", 1, (A(v=MATCH.v), B(v=MATCH.w), TEST(lambda v, w: v > w)), lambda v: None)
    found = why_not(larger, [A(v=1), B(v=2), B(v=1)])
    assert (found.index, found.kind) == (2, "test")
    assert [dict(each) for each in found.bindings] == [{"v": 1, "w": 1}, {"v": 1, "w": 2}]


def test_exists_tells_how_near_its_facts_come() -> None:
    some = RuleSpec("some", 1, (A(v=MATCH.v), EXISTS(B(v=MATCH.v), C(v=MATCH.v))), lambda v: None)
    found = why_not(some, [A(v=1), B(v=1), C(v=2)])
    assert (found.index, found.kind) == (1, "exists")
    assert found.misses[0].fact == C(v=2)
    assert found.misses[0].slots == (SlotMiss("v", (1,), 2, "bound"),)


def test_forall_names_the_facts_that_lack_something() -> None:
    each = rule("each", FORALL(A(v=MATCH.v), B(v=MATCH.v)))
    found = why_not(each, [A(v=1), A(v=2), A(v=3), B(v=2)])
    assert (found.index, found.kind, found.blockers) == (0, "forall", (A(v=1), A(v=3)))


def test_of_alternatives_the_one_that_comes_farthest_counts() -> None:
    either = rule("either", OR(A(v=1), B(v=1)), C(v=1))
    assert why_not(either, [B(v=1), C(v=2)]).index == 1
    none = why_not(either, [A(v=2), B(v=3)])
    assert (none.index, none.condition) == (0, either.conditions[0])
    assert {miss.fact for miss in none.misses} == {A(v=2), B(v=3)}


def test_a_run_is_asked_at_its_end() -> None:
    late = rule("late", Made(by="first"), layer=2)
    run = Engine([rule("first", A()), late]).run([A(v=1)])
    assert why_not(late, run).holds
    assert why_not(late, [A(v=1)]).index == 0


@pytest.mark.parametrize("number", range(40))
def test_it_agrees_with_what_fired(number: int) -> None:
    maker = Maker(f"why not {number}")
    rules, facts = [spec(each) for each in maker.rule_set(12)], maker.facts(8)
    run = Engine(rules).run(facts)
    fired = {firing.rule for firing in run.firings}
    for each in rules:
        found = why_not(each, run)
        assert found.holds is (each.id in fired), each.id
        if found.index is not None:
            shorter = [RuleSpec("x", 9, each.conditions[: found.index + more], lambda: None) for more in (0, 1)]
            fires = [bool(Engine([short]).run(run.facts).firings) for short in shorter]
            assert fires == [True, False], each.id
