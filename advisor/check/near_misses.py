"""A near miss differs in one thing, and every condition is proved: without it some near miss would fire."""

from collections.abc import Iterator, Mapping
from typing import Any

from advisor.check.examples import fired, near_facts
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.shape import looser
from advisor.engine import NOT, TEST, Engine, RuleSpec, SlotFact
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
    own = len(card.conditions()) - len(card.when)
    # What a card implies is proved by the card itself, once for all; only a bare Answer has nothing else.
    bare = isinstance(card, Answer) and not card.when
    asked = [index for index in range(len(card.conditions())) if bare or index >= own]
    proved = _left_out(material, id, card)
    proved |= _noticed(spec_of(id, card), card, [index for index in asked if index not in proved], misses)
    for index in asked:
        if index not in proved:
            words = card.conditions()[index].words
            hint = "add a near miss that only this condition keeps silent"
            what = f"condition '{words}' is not proved by a near miss"
            book.error(material.where(id), what, hint, material.line(id, words))


def _noticed(spec: RuleSpec, card: Card, left: list[int], misses: list[tuple[SlotFact, ...]]) -> set[int]:
    """Which of the conditions `left` some near miss is kept silent by: without it, or looser, it would fire there."""
    mutants = {
        f"{index} {number}": mutant
        for index in left
        for number, mutant in enumerate(_mutants(spec, index, card.conditions()[index]))
    }
    return {int(name.partition(" ")[0]) for name in _fired(mutants, misses)}


def _left_out(material: Material, id: str, card: Card) -> set[int]:
    """The conditions whose fact some near miss leaves out."""
    if not any(near.without for near in card.near):
        return set()
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


def _mutants(spec: RuleSpec, index: int, condition: Condition) -> Iterator[tuple[Any, ...]]:
    """The conditions of a rule without this one, or with a copy of it that asks for less."""
    elements: list[Any] = list(spec.conditions)
    if isinstance(elements[index], TEST | NOT):
        yield (*elements[:index], *elements[index + 1 :])
        return
    for _, copy in looser(elements[index]):
        yield (*elements[:index], copy, *elements[index + 1 :])


def _fired(mutants: Mapping[str, tuple[Any, ...]], misses: list[tuple[SlotFact, ...]]) -> set[str]:
    """The mutants that fire on some near miss: all in one engine, or, if one of them breaks, each in its own."""
    found = {name for name, conditions in mutants.items() if not conditions and misses}
    specs = [RuleSpec(name, 1, conditions, lambda: None) for name, conditions in mutants.items() if conditions]
    try:
        engine = Engine(specs, FACTS)
        for facts in misses if specs else ():
            found |= {firing.rule for firing in engine.run(facts).firings}
    except Exception:  # a test that meets a value it was never meant for, or a copy no engine takes
        if len(specs) > 1:
            return found.union(*(_fired({spec.id: spec.conditions}, misses) for spec in specs))
        if len(misses) > 1:
            return found.union(*(_fired(mutants, [facts]) for facts in misses))
    return found


def _safe_fired(engine: Engine, id: str, facts: tuple[SlotFact, ...]) -> tuple[Any, ...]:
    try:
        return fired(engine, id, facts)
    except Exception:  # the examples check tells of it
        return ()
