"""Facts go when their ground goes, and a changed run is the run one would have had from the start.

The examples are worked out by hand, in the comments beside them. "As a fresh run" is checked on random
rule sets too, against CLIPS.
"""

from __future__ import annotations

import pytest
from engine_words import A, B, C, Made, rule, with_v

from advisor.engine import EXISTS, MATCH, NOT, Engine, RuleSpec, Slot, SlotFact
from advisor.errors import KnowledgeError


class Can(SlotFact):
    do = Slot(str)


class Fix(SlotFact):
    name = Slot(str)


GUSSET = [
    RuleSpec("let_out", 1, (A(v=1),), lambda: Can(do="let out")),
    RuleSpec("gusset", 2, (B(v=1), NOT(Can(do="let out"))), lambda: Fix(name="gusset")),
    RuleSpec("take_time", 3, (Fix(name=MATCH.n),), lambda n: Made(by=n, v=60)),
]


def test_a_conclusion_from_a_not_goes_when_the_not_fails_and_comes_back() -> None:
    session = Engine(GUSSET).session([B(v=1)])
    assert session.result().of(Fix) == (Fix(name="gusset"),)
    letting = session.add([A(v=1)])
    # The gusset rested on there being no way to let out; its minutes rested on the gusset.
    assert letting.of(Fix) == letting.of(Made) == ()
    assert session.withdraw([A(v=1)]) == Engine(GUSSET).run([B(v=1)])


def test_a_fact_with_two_grounds_stays_until_both_are_gone() -> None:
    rules = [RuleSpec(f"r{n}", 1, (A(v=n),), lambda: Fix(name="hem")) for n in (1, 2)]
    session = Engine(rules).session([A(v=1), A(v=2)])
    assert [f.rule for f in session.result().justifications(Fix(name="hem"))] == ["r1", "r2"]
    once = session.withdraw([A(v=1)])
    assert [f.rule for f in once.justifications(Fix(name="hem"))] == ["r2"]
    assert session.withdraw([A(v=2)]).facts == ()


def test_a_given_fact_stays_when_what_also_derived_it_goes() -> None:
    session = Engine([RuleSpec("r", 1, (A(),), lambda: B(v=1))]).session([A(v=1), B(v=1)])
    assert session.withdraw([A(v=1)]).facts == (B(v=1),)
    assert session.add([A(v=1)]).facts == (A(v=1), B(v=1))
    # B is no longer given, only derived; that is as good as before.
    assert session.withdraw([B(v=1)]).facts == (A(v=1), B(v=1))


def test_facts_that_support_only_each_other_go() -> None:
    ring = [
        RuleSpec("a_to_b", 1, (A(v=MATCH.v),), lambda v: B(v=v)),
        RuleSpec("b_to_c", 1, (B(v=MATCH.v),), lambda v: C(v=v)),
        RuleSpec("c_to_b", 1, (C(v=MATCH.v),), lambda v: B(v=v)),
    ]
    session = Engine(ring).session([A(v=1), A(v=2)])
    assert len(session.result().of(C)) == 2
    # B(1) and C(1) still justify each other, but nothing given stands behind them.
    assert session.withdraw([A(v=1)]).facts == (A(v=2), B(v=2), C(v=2))


def test_a_fact_that_justifies_itself_goes() -> None:
    rules = [RuleSpec("r", 1, (A(v=MATCH.v),), lambda v: B(v=v)), RuleSpec("s", 1, (B(v=MATCH.v),), lambda v: B(v=v))]
    session = Engine(rules).session([A(v=1)])
    assert session.withdraw([A(v=1)]).facts == ()


def test_a_later_layer_that_loses_its_not_in_one_run_is_reported() -> None:
    early = [with_v("early", A(v=MATCH.v), NOT(B())), RuleSpec("later", 2, (A(),), lambda: B(v=1))]
    run = Engine(early).run([A(v=1)])
    # `early` fired, then `later` made the B that it must not see; what it concluded is gone again.
    assert run.facts == (A(v=1), B(v=1)) and run.revoked == ("early",)
    with pytest.raises(KnowledgeError, match=r"early: its conditions stopped holding after it fired"):
        Engine(early, record=False).run([A(v=1)])


def test_exists_holds_as_long_as_any_is_left() -> None:
    session = Engine([rule("r", EXISTS(A()))]).session([A(v=1), A(v=2)])
    assert session.withdraw([A(v=1)]).of(Made)
    assert not session.withdraw([A(v=2)]).of(Made)


def test_only_given_facts_can_be_withdrawn() -> None:
    session = Engine([RuleSpec("r", 1, (A(),), lambda: B(v=1))]).session([A(v=1)])
    with pytest.raises(KnowledgeError, match=r"B to withdraw was never given"):
        session.withdraw([B(v=1)])
    with pytest.raises(KnowledgeError, match=r"this run failed before"):
        session.result()


def test_an_earlier_result_is_not_touched_by_later_changes() -> None:
    session = Engine(GUSSET).session([B(v=1)])
    before = session.result()
    session.add([A(v=1)])
    assert before == Engine(GUSSET).run([B(v=1)])


def test_a_session_without_records_cannot_be_changed() -> None:
    session = Engine(GUSSET, record=False).session([B(v=1)])
    assert session.result().of(Fix) == (Fix(name="gusset"),)
    with pytest.raises(KnowledgeError, match=r"without records cannot change a run"):
        session.add([A(v=1)])
