"""Copies of rules that speak of parts no garment has, for the bench on our own rules."""

from __future__ import annotations

from typing import Any

from advisor.engine import RuleSpec, SlotFact
from advisor.engine.experta_shim import ConditionalElement, FieldConstraint


def unrelated(spec: RuleSpec) -> RuleSpec:
    """The same rule speaking of other roles, slots, problems and fixes than any garment has."""
    return RuleSpec(f"other.{spec.id}", spec.layer, tuple(map(_other, spec.conditions)), spec.action)


def names_a_word(spec: RuleSpec) -> bool:
    """Whether a rule names a role, slot, problem or fix at all; one that does not reads whatever there is."""
    return any(_names(part) for part in spec.conditions)


def _names(part: Any) -> bool:
    if isinstance(part, SlotFact):
        return any(_other_word(part, slot, value) != value for slot, value in part.items() if isinstance(value, str))
    return isinstance(part, ConditionalElement) and any(map(_names, part))


def _other(part: Any) -> Any:
    if isinstance(part, SlotFact):
        return type(part)(**{slot: _other_word(part, slot, value) for slot, value in part.items()})
    if isinstance(part, ConditionalElement) and not isinstance(part, FieldConstraint):
        return type(part)(*map(_other, part))
    return part


def _other_word(fact: SlotFact, slot: str, value: Any) -> Any:
    free = slot in fact.__fields__ and fact.__fields__[slot].words is None
    return f"other {value}" if isinstance(value, str) and free and slot != "__bind__" else value
