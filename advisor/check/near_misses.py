"""Check 5: a near miss differs in one thing, and every condition is proved: without it some near miss would fire."""

from collections.abc import Iterator
from typing import Any

from advisor.check.examples import fired, near_facts
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.shape import looser
from advisor.engine import NOT, TEST, Engine, RuleSpec, SlotFact
from advisor.errors import KnowledgeError
from advisor.knowledge.cards import Answer, Card, Condition, Near
from advisor.knowledge.facts import FACTS
from advisor.rulebase.specs import spec_of

TOGETHER = {"key": {"slot", "place"}, "id": {"name", "kind", "place"}, "problem": {"name", "place"}, "role": {"place"}}


def check(material: Material, book: Book) -> None:
    """Every near miss and every condition of every sound rule."""
    for id in sorted(material.sound):
        card = material.rules[id]
        if not card.near:
            book.error(
                material.where(id),
                "has no near miss",
                "add near(...) for each condition",
                material.line(id, keyword="near"),
            )
            continue
        for near in card.near:
            _one_thing(material, book, id, card, near)
        _proved(material, book, id, card)


def _one_thing(material: Material, book: Book, id: str, card: Card, near: Near) -> None:
    facts = near_facts(card, near)
    if facts is None:
        return
    first = card.fires[0].facts
    if near.adding:
        changed = len([fact for fact in near.adding if fact not in first])
    elif near.without:
        changed = 1
    else:
        old = first[near.at]
        slots = {slot for slot, value in near.changes.items() if old.get(slot) != value}
        changed = len([slot for slot in slots if not TOGETHER.get(slot, set()) & slots])
    if changed != 1:
        what = "changes nothing" if not changed else f"changes {changed} things"
        book.error(
            material.where(id),
            f"near miss '{near.words}' {what}",
            "a near miss differs from the first example in one thing",
            material.line(id, near.words),
        )


def _proved(material: Material, book: Book, id: str, card: Card) -> None:
    if not card.fires:
        return
    misses = [facts for near in card.near for facts in [near_facts(card, near)] if facts is not None]
    spec = spec_of(id, card)
    own = len(card.conditions()) - len(card.when)
    left_out = _left_out(material, id, card)
    for index, condition in enumerate(card.conditions()):
        # What a card implies is proved by the card itself, once for all; only a bare Answer has nothing else.
        if index < own and not (isinstance(card, Answer) and not card.when):
            continue
        if index in left_out or any(_fires(mutant, misses) for mutant in _mutants(spec, index, condition)):
            continue
        hint = "add a near miss that only this condition keeps silent"
        book.error(
            material.where(id),
            f"condition '{condition.words}' is not proved by a near miss",
            hint,
            material.line(id, condition.words),
        )


def _left_out(material: Material, id: str, card: Card) -> set[int]:
    """The conditions whose fact some near miss leaves out."""
    firings = _safe_fired(material.alone(id), id, card.fires[0].facts)
    if not firings:
        return set()
    patterns = [i for i, c in enumerate(card.conditions()) if not isinstance(c.element, TEST | NOT)]
    found: set[int] = set()
    for near in card.near:
        if near.without and near.at < len(card.fires[0].facts):
            gone = card.fires[0].facts[near.at]
            found |= {i for i, fact in zip(patterns, firings[0].premises, strict=False) if fact == gone}
    return found


def _mutants(spec: RuleSpec, index: int, condition: Condition) -> Iterator[RuleSpec]:
    elements: list[Any] = list(spec.conditions)
    if isinstance(elements[index], TEST | NOT):
        yield _with(spec, [*elements[:index], *elements[index + 1 :]])
        return
    for _, copy in looser(elements[index]):
        yield _with(spec, [*elements[:index], copy, *elements[index + 1 :]])


def _with(spec: RuleSpec, elements: list[Any]) -> RuleSpec:
    return RuleSpec(spec.id, spec.layer, tuple(elements), lambda: None)


def _fires(mutant: RuleSpec, misses: list[tuple[SlotFact, ...]]) -> bool:
    if not mutant.conditions:
        return True
    try:
        engine = Engine([mutant], FACTS)
    except KnowledgeError:
        return False
    return any(_safe_fired(engine, mutant.id, facts) for facts in misses)


def _safe_fired(engine: Engine, id: str, facts: tuple[SlotFact, ...]) -> tuple[Any, ...]:
    try:
        return fired(engine, id, facts)
    except Exception:  # the examples check tells of it
        return ()
