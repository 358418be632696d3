"""What a rule is: conditions in experta's own words, and an action that only answers facts."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

from advisor.engine.facts import SlotFact

Answer = Iterable[SlotFact] | SlotFact | None


@dataclass(frozen=True)
class RuleSpec:
    """One rule.

    id          unique; part of the firing order
    layer       lower layers run until nothing is left to fire, then the next
    conditions  patterns, TEST, NOT, EXISTS, FORALL, OR, AND; what binds a name comes before what uses it
    action      pure; gets the bound names it asks for as keywords, answers facts (or one, or None)

    What NOT, EXISTS and FORALL look at should be settled in lower layers: only then do the facts of a
    run not depend on the order of firing (see `Run.revoked`).
    """

    id: str
    layer: int
    conditions: tuple[Any, ...]
    action: Callable[..., Answer]


@dataclass(frozen=True)
class Asked:
    """The names a function asks for: all, those without a default, and whether it takes any (`**names`)."""

    named: tuple[str, ...]
    required: tuple[str, ...]
    everything: bool


def parameters(function: Callable[..., Any]) -> Asked:
    """What `function` asks for."""
    found = inspect.signature(function).parameters.values()
    # A parameter that cannot be given by keyword counts as asked for, so that it is refused by name.
    named = tuple(p for p in found if p.kind is not p.VAR_KEYWORD and p.kind is not p.VAR_POSITIONAL)
    return Asked(
        tuple(p.name for p in named),
        tuple(p.name for p in named if p.default is p.empty),
        any(p.kind is p.VAR_KEYWORD for p in found),
    )


def answered(answer: Any) -> tuple[SlotFact, ...]:
    """The facts of an action's answer."""
    if answer is None:
        return ()
    # A fact is a mapping and so an iterable too: it must be told apart first.
    if isinstance(answer, SlotFact):
        return (answer,)
    return tuple(answer)
