"""Random rule sets give the same facts on experta's own matcher, and on experta's own loop with ours.

Checked against: experta 1.9.4 (LGPL), with a firing order that leaves out what no longer holds. The rules
keep to what experta gets right: NOT of one pattern, after what binds its names; no EXISTS, no FORALL.
"""

from __future__ import annotations

import pytest
from engine_fuzz import Maker, spec
from engine_seeds import SEED, blocks
from engine_stock import stock_engine, stock_run

from advisor.engine import Engine
from advisor.engine.matcher import JoinMatcher, RankOrder


@pytest.mark.parametrize("seeds", blocks(200), ids=lambda seeds: f"from{seeds[0]}")
def test_a_run_gives_the_facts_of_stock_experta(seeds: range) -> None:
    derived = 0
    for number in seeds:
        maker = Maker(f"plain {SEED}/{number}", plain=True)
        rules = [spec(rule) for rule in maker.rule_set(10)]
        facts = maker.facts(12)
        run = Engine(rules).run(facts)
        assert set(run.facts) == stock_run(stock_engine(rules), facts), f"seed {number}"
        derived += len(run.facts) - len(facts)
    assert derived > len(seeds)


@pytest.mark.parametrize("seeds", blocks(100), ids=lambda seeds: f"from{seeds[0]}")
def test_matcher_and_order_work_in_the_loop_of_stock_experta(seeds: range) -> None:
    for number in seeds:
        maker = Maker(f"hooks {SEED}/{number}")
        rules = [spec(rule) for rule in maker.rule_set(10)]
        facts = maker.facts(12)
        hooked = stock_engine(rules, JoinMatcher, RankOrder)
        assert set(Engine(rules).run(facts).facts) == stock_run(hooked, facts), f"seed {number}"
