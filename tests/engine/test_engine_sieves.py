"""A TEST of one fact shuts that fact out early, and is still heard only after the patterns above it.

The examples are worked out by hand, in the comments beside them.
"""

from __future__ import annotations

import pytest
from engine_words import A, B, Made

from advisor.engine import MATCH, TEST, Engine, RuleSpec
from advisor.errors import KnowledgeError


def _by(v: int) -> Made:
    return Made(by="r", v=v)


def test_a_test_that_cannot_answer_fails_only_in_its_place() -> None:
    engine = Engine([RuleSpec("r", 1, (A(v=MATCH.v), B(v=1), TEST(lambda v: 10 % v == 0)), _by)])
    # Ten divided by nothing cannot be told, but without a B nobody asks.
    assert engine.run([A(v=0), A(v=5)]).of(Made) == ()
    assert engine.run([A(v=5), A(v=3), B(v=1)]).of(Made) == (Made(by="r", v=5),)
    with pytest.raises(KnowledgeError, match=r"r: a TEST of v failed with ZeroDivisionError"):
        engine.run([A(v=0), B(v=1)])


def test_a_fact_that_its_test_shuts_out_is_not_joined() -> None:
    asked: list[int] = []

    def small(v: int) -> bool:
        asked.append(v)
        return v < 3

    engine = Engine([RuleSpec("r", 1, (A(v=MATCH.v), B(v=MATCH.w), TEST(small)), _by)])
    facts = [*(A(v=v) for v in range(10)), *(B(v=w) for w in range(10))]
    assert engine.run(facts).of(Made) == tuple(Made(by="r", v=v) for v in range(3))
    # Once for each of the ten, and again in its place for no more than the three it lets pass, with each of ten.
    assert len(asked) <= 10 + 3 * 10
    asked.clear()
    engine.run(facts[:10])
    # They were met before, and there is no B.
    assert asked == []


def test_a_changed_run_hears_the_tests_of_new_facts() -> None:
    engine = Engine([RuleSpec("r", 1, (A(v=MATCH.v), B(v=MATCH.w), TEST(lambda v: v < 3)), _by)])
    session = engine.session([A(v=5), B(v=1)])
    assert session.result().of(Made) == ()
    assert session.change([A(v=5)], [A(v=2)]) == engine.run([A(v=2), B(v=1)])
    assert session.withdraw([B(v=1)]).of(Made) == ()
    assert session.add([B(v=4)]).of(Made) == (Made(by="r", v=2),)
