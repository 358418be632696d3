"""Random rule sets give the facts and the firings that CLIPS gives.

Checked against: CLIPS 6.4 through clipspy (BSD), an independent engine whose meaning of NOT, EXISTS,
FORALL and logical support experta set out to follow.
"""

from __future__ import annotations

from collections import Counter

import pytest
from engine_fuzz import Clips, Maker, RuleData, clips_text, spec
from engine_seeds import SEED, blocks

from advisor.engine import Engine

pytest.importorskip("clips", reason="clipspy is not installed; install the extra 'test'")


def shown(rules: list[RuleData], seed: object) -> str:
    return f"seed {seed}:\n" + "\n".join(clips_text(rule) for rule in rules)


@pytest.mark.parametrize("seeds", blocks(450), ids=lambda seeds: f"from{seeds[0]}")
def test_a_run_gives_the_facts_and_firings_of_clips(seeds: range) -> None:
    derived = 0
    for number in seeds:
        maker = Maker(f"{SEED}/{number}")
        rules = maker.rule_set(12)
        facts = maker.facts(maker.random.choice((6, 12, 20)))
        wanted, fired = Clips(rules).run(facts)
        run = Engine([spec(rule) for rule in rules]).run(facts)
        assert set(run.facts) == wanted, shown(rules, number)
        assert Counter(firing.rule for firing in run.firings) == fired, shown(rules, number)
        assert not run.revoked, shown(rules, number)
        derived += len(run.facts) - len(facts)
    # A block in which nothing follows would prove nothing.
    assert derived > len(seeds)


@pytest.mark.parametrize("seeds", blocks(200), ids=lambda seeds: f"from{seeds[0]}")
def test_changed_facts_give_what_a_fresh_run_and_clips_give(seeds: range) -> None:
    ended = 0
    for number in seeds:
        maker = Maker(f"session {SEED}/{number}")
        rules = maker.rule_set(10)
        given, spare = set(maker.facts(12)), maker.facts(30)
        engine, clips = Engine([spec(rule) for rule in rules]), Clips(rules)
        session = engine.session(given)
        for _ in range(4):
            ordered = sorted(given, key=lambda fact: fact.order)
            out = maker.random.sample(ordered, min(len(ordered), maker.random.choice((0, 1, 1, 2, 3))))
            new = maker.random.sample(spare, maker.random.choice((0, 1, 1, 2)))
            given = (given - set(out)) | set(new)
            before = len(session.result().firings)
            changed = session.change(out, new)
            assert changed == engine.run(given), shown(rules, number)
            ended += len(changed.firings) < before
        wanted, _ = clips.run(sorted(given, key=lambda fact: fact.order))
        assert set(changed.facts) == wanted, shown(rules, number)
    assert ended > 0
