"""experta as it comes, with the least that makes its firings right: the yardstick for our own matcher."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from advisor.engine import RuleSpec, SlotFact
from advisor.engine.experta_shim import Agenda, DepthStrategy, InitialFact, KnowledgeEngine, ReteMatcher
from advisor.engine.lean import experta_rule


class SafeDepth(DepthStrategy):
    """experta's depth-first order, but nothing fires that no longer holds, and addresses decide nothing.

    experta looks for a stale activation near one place of a sorted list and can miss it; here the list is
    made anew.
    """

    def _update_agenda(self, agenda: Agenda, added: Iterable[Any], removed: Iterable[Any]) -> None:
        gone = set(removed)
        kept = [each for each in agenda.activations if each not in gone]
        agenda.activations = sorted([*kept, *added], key=_place)


def _place(activation: Any) -> tuple[Any, ...]:
    numbers = sorted((fact.__factid__ or 0 for fact in activation.facts), reverse=True)
    return (activation.rule.salience, numbers, activation.rule.__name__)


def stock_engine(rules: Iterable[RuleSpec], matcher: type = ReteMatcher, strategy: type = SafeDepth) -> Any:
    """A plain experta engine with these rules, and the given matcher and strategy in its two hooks."""
    space: dict[str, Any] = {f"rule_{number}": experta_rule(rule) for number, rule in enumerate(rules)}
    space |= {"__matcher__": matcher, "__strategy__": strategy}
    return type("Stock", (KnowledgeEngine,), space)()


def stock_run(engine: Any, facts: Iterable[SlotFact]) -> set[SlotFact]:
    """All facts, given and derived, by experta's own reset, declare and run."""
    engine.reset()
    for fact in facts:
        engine.declare(fact.copy())
    engine.run(50_000)
    return {fact.copy() for fact in engine.facts.values() if not isinstance(fact, InitialFact)}
