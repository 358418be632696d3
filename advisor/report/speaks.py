"""Whether a veto may speak of a fix for a problem, as far as its card tells; left open, it may."""

import inspect
from collections.abc import Iterator
from itertools import product
from typing import Any

from advisor.core.model import place_of, slot_of
from advisor.engine import SlotFact
from advisor.knowledge.cards import Answer, Find, Veto
from advisor.knowledge.facts import Measure, Trait
from advisor.rulebase.base import RuleBase
from advisor.rulebase.specs import call, literal_role


def speaks_of(base: RuleBase, veto: Veto, fix: str, problem: str = "") -> bool:
    """Whether the tests of a veto that ask for nothing but fix, problem and words of states let them through, and the
    part the fix is for has what the veto looks at there. `problem` "": any."""
    if not veto.names(fix):
        return False
    known: dict[str, Any] = {"fix": fix, "name": problem} if problem else {"fix": fix}
    words = _words(base, veto)
    tests = [condition.test for condition in veto.when if condition.test]
    asked = [(test, set(inspect.signature(test).parameters)) for test in tests]
    for test, names in asked:
        open_names = sorted(names - known.keys())
        if names & known.keys() and all(name in words for name in open_names):
            tried = product(*(words[name] for name in open_names))
            if not any(call(test, {**known, **dict(zip(open_names, each, strict=True))}) for each in tried):
                return False
    roles = _roles(base, fix, problem)
    return not roles or any(all(slot in _slots(base, role) for slot in _looked_at(veto)) for role in roles)


def _words(base: RuleBase, veto: Veto) -> dict[str, list[str]]:
    """The words each name may stand for that a veto binds to a state."""
    found: dict[str, list[str]] = {}
    for condition in veto.when:
        pattern = condition.element
        name = getattr(pattern.get("word"), "__bind__", None) if isinstance(pattern, Trait) else None
        role, slot = (pattern.get("role"), pattern.get("slot")) if name else (None, None)
        if name and isinstance(role, str) and isinstance(slot, str):
            garments = base.garments.values()
            keys = {(g.id, f"{p.name}.{slot}"): g for g in garments for p in g.places.values() if p.role == role}
            found[name] = sorted({word for (_, key), g in keys.items() for word in g.allowed.get(key, ())})
    return found


def _roles(base: RuleBase, fix: str, problem: str) -> set[str]:
    """The roles a fix is offered at, where all its answers, or the findings of their problems, say one; else none."""
    roles: set[str] = set()
    for _, answer in sorted(base.rules.items()):
        if isinstance(answer, Answer) and answer.fix == fix and problem in ("", answer.problem):
            finds = [card for card in base.rules.values() if isinstance(card, Find) and card.problem == answer.problem]
            roles |= {answer.role} if answer.role else {literal_role(card) for card in finds}
    return set() if "" in roles else roles


def _looked_at(veto: Veto) -> Iterator[str]:
    """The slots a veto looks at in the very part the fix is for."""
    for condition in veto.when:
        pattern = condition.element
        if isinstance(pattern, SlotFact) and isinstance(pattern, Measure | Trait):
            slot = pattern.get("slot")
            if getattr(pattern.get("place"), "__bind__", "") == "place" and isinstance(slot, str):
                yield slot


def _slots(base: RuleBase, role: str) -> set[str]:
    return {
        slot_of(key)
        for garment in base.garments.values()
        for key in garment.names
        if garment.places[place_of(key)].role == role
    }
