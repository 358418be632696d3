"""Our own rule base on our own cases, and on worlds one answer away: CLIPS must conclude the same as our engine.

The rules are written out anew for CLIPS, word for word; `bench_base` says how.
"""

from __future__ import annotations

from advisor.engine import SlotFact
from advisor.rulebase.base import the_base
from tests.engine.bench_base import MADE, ClipsSide, worlds

BASE = the_base()
MORE = 40


def test_clips_has_the_same_conclusions_and_the_same_reasons() -> None:
    side = ClipsSide(BASE, recording=True)
    fired = 0
    for facts in worlds(BASE, MORE):
        side.prepare(facts)()
        run = BASE.engine.run(facts)
        ours: set[SlotFact] = {fact for cls in MADE for fact in run.of(cls)}
        assert side.concluded() == ours
        for fact in ours:
            assert sorted(rule for rule, _ in side.records[fact]) == [f.rule for f in run.justifications(fact)]
        assert set(side.records) == ours
        fired += len(run.firings)
    assert fired > 1000
