"""Cards turned into rules of the engine."""

import inspect
from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import lru_cache
from typing import Any

from advisor.engine import RuleSpec, SlotFact
from advisor.knowledge import facts
from advisor.knowledge.cards import LAYER, Answer, Card, Find, Veto

KEPT = 4096
NOTHING = Fraction(0)


def spec_of(id: str, card: Card) -> RuleSpec:
    """The engine's rule for a card."""
    action: Callable[..., SlotFact]
    if isinstance(card, Find):
        action = _finding(card)
    elif isinstance(card, Answer):
        action = _offer(card)
    else:
        assert isinstance(card, Veto)
        action = _veto(id, card)
    elements = tuple(condition.element for condition in card.conditions())
    return RuleSpec(id, LAYER[type(card)], elements, action)


def call(function: Callable[..., Any], bound: Mapping[str, Any]) -> Any:
    """`function` with those bound values that it asks for by name."""
    return function(**{name: bound[name] for name in _asked(function)})


@lru_cache(maxsize=KEPT)
def _asked(function: Callable[..., Any]) -> tuple[str, ...]:
    # Reading a signature takes longer than most of what is reckoned.
    return tuple(inspect.signature(function).parameters)


def literal_role(card: Card) -> str:
    """The role a card's patterns fix in words, where no name is bound to it."""
    roles = [c.element.get("role") for c in card.conditions() if isinstance(c.element, SlotFact)]
    return next((role for role in roles if isinstance(role, str)), "")


def _finding(card: Find) -> Callable[..., facts.Problem]:
    fixed = literal_role(card)

    def action(**bound: Any) -> facts.Problem:
        place = bound["place"]
        return facts.Problem(
            id=f"{card.problem}@{place}",
            name=card.problem,
            place=place,
            role=bound.get("role", fixed),
            stage=card.stage,
            mm=call(card.amount, bound) if card.amount else NOTHING,
        )

    return action


def _offer(card: Answer) -> Callable[..., facts.Offer]:
    def action(**bound: Any) -> facts.Offer:
        return facts.Offer(
            problem=bound["problem"],
            name=card.problem,
            fix=card.fix,
            place=bound["place"],
            role=card.role or bound["role"],
        )

    return action


def _veto(id: str, card: Veto) -> Callable[..., facts.Veto]:
    fix = card.fix if isinstance(card.fix, str) else ""

    def action(**bound: Any) -> facts.Veto:
        return facts.Veto(problem=bound["problem"], fix=fix or bound["fix"], rule=id)

    return action
