"""Our own rule base on our own cases: experta's own matcher must conclude the same as ours.

experta is as it comes, with the least that makes its firings right.
"""

from __future__ import annotations

from engine_stock import stock_engine, stock_run

from advisor.rulebase.base import the_base
from advisor.rulebase.specs import spec_of
from tests.engine.bench_base import worlds
from tests.some_cases import some

BASE = the_base()


def test_stock_experta_has_the_same_facts() -> None:
    stock = stock_engine([spec_of(id, BASE.rules[id]) for id in sorted(BASE.rules)])
    concluded = 0
    tried = some(list(worlds(BASE, 0)), 3)
    for facts in tried:
        run = BASE.engine.run(facts)
        assert stock_run(stock, facts) == set(run.facts)
        assert run.revoked == ()
        concluded += len(run.facts) - len(facts)
    assert concluded > 20 * len(tried)
