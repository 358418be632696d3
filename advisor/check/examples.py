"""Examples of facts that can be, each firing its rule alone and among all, with the amount it states."""

from collections.abc import Callable, Iterable
from typing import Any

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.vocabulary import word_fault
from advisor.check.wording import sentence_faults
from advisor.core.model import Mm, Place
from advisor.engine import AND, EXISTS, FORALL, NOT, OR, Engine, Firing, SlotFact
from advisor.errors import AdvisorError, nearest
from advisor.knowledge.cards import Card, Example, Find, Near
from advisor.knowledge.facts import Joined, Measure, Offer, Problem, Trait
from advisor.lengths import INCH_TAPE, show
from advisor.rulebase.specs import call
from advisor.words import Teller


def check(material: Material, book: Book) -> None:
    """Every example of every sound rule."""
    for id in sorted(material.sound):
        card = material.rules[id]
        alone = material.alone(id)
        if not card.fires:
            book.error(
                material.where(id),
                "has no example on which it fires",
                "add fires(...)",
                material.line(id, keyword="fires"),
            )
        for example in card.fires:
            _facts(material, book, id, f"example '{example.words}'", example.facts)
            _firing(material, book, id, card, example, alone)
        for near in card.near:
            _silent(material, book, id, card, near, alone)


def near_facts(card: Card, near: Near) -> tuple[SlotFact, ...] | None:
    """The facts of a near miss; None if it points at a fact the first example does not have."""
    facts = list(card.fires[0].facts) if card.fires else []
    if near.adding:
        return (*facts, *near.adding)
    if not 0 <= near.at < len(facts):
        return None
    old = facts.pop(near.at)
    if near.without:
        return tuple(facts)
    facts.insert(near.at, type(old)(**{**old, **near.changes}))
    return tuple(facts)


def fired(engine: Engine, id: str, facts: Iterable[SlotFact]) -> tuple[Firing, ...]:
    """The firings of one rule on these facts."""
    return tuple(firing for firing in engine.run(facts).firings if firing.rule == id)


def _firing(material: Material, book: Book, id: str, card: Card, example: Example, alone: Engine) -> None:
    def wrong(what: str, hint: str) -> None:
        book.error(material.where(id), f"example '{example.words}' {what}", hint, material.line(id, example.words))

    try:
        firings = fired(alone, id, example.facts)
        if not firings:
            wrong("does not fire", "mend the example or the conditions")
            return
        _amount(card, example, firings, wrong)
        _told(material, card, firings[0], wrong)
        if _hindered(card) and not fired(material.whole, id, example.facts):
            wrong("does not fire among the other rules", "another rule stands in its way")
    except Exception as fault:  # an author's function may raise anything
        wrong(f"breaks: {_said(fault)}", "mend the function, so that it takes every value it can get")


def _silent(material: Material, book: Book, id: str, card: Card, near: Near, alone: Engine) -> None:
    def wrong(what: str, hint: str) -> None:
        book.error(material.where(id), f"near miss '{near.words}' {what}", hint, material.line(id, near.words))

    facts = near_facts(card, near)
    if facts is None:
        wrong(f"speaks of fact {near.at}", "facts are counted from 0; see the first example")
        return
    _near_words(material, book, id, card, near)
    try:
        for engine, among in _engines(material, card, alone):
            # What other rules make of the facts is another example: a refused fix may be offered anew by its answer.
            if any(set(firing.premises) <= set(facts) for firing in fired(engine, id, facts)):
                wrong(f"fires{among}", "it must stay silent: mend it or the conditions")
                return
    except Exception as fault:  # an author's function may raise anything
        wrong(f"breaks: {_said(fault)}", "mend the function, so that it takes every value")


def _hindered(card: Card) -> bool:
    """Whether other rules can keep it silent: by what an `unless` of it, or the like, looks at."""
    return any(isinstance(each, NOT) or _quantified(each) for each in (c.element for c in card.conditions()))


def _engines(material: Material, card: Card, alone: Engine) -> list[tuple[Engine, str]]:
    """Where a near miss must stay silent. Alone will do, unless the card asks for what others may conclude: more facts
    never meet a condition that fewer did not, but for EXISTS and FORALL."""
    quantified = any(_quantified(condition.element) for condition in card.conditions())
    return [(alone, ""), (material.whole, " among the other rules")] if quantified else [(alone, "")]


def _quantified(element: Any) -> bool:
    if isinstance(element, NOT):
        return not all(isinstance(part, SlotFact) for part in element)
    if isinstance(element, AND | OR):
        return any(_quantified(part) for part in element)
    return isinstance(element, EXISTS | FORALL)


def _said(fault: Exception) -> str:
    return fault.what if isinstance(fault, AdvisorError) else f"{type(fault).__name__}: {fault}"


def _amount(card: Card, example: Example, firings: tuple[Firing, ...], wrong: Callable[[str, str], None]) -> None:
    if not isinstance(card, Find):
        return
    found = {fact.mm for firing in firings for fact in firing.conclusions if isinstance(fact, Problem)}
    if example.amount is None:
        if card.amount and example is card.fires[0]:
            wrong("states no amount, and the card reckons one", f'add amount=length("{_shown(min(found))}")')
    elif found != {example.amount}:
        wrong(
            f"comes to {' and '.join(_shown(mm) for mm in sorted(found))}, not {_shown(example.amount)}",
            "mend one of the two",
        )


def _shown(mm: Mm) -> str:
    return show(mm, INCH_TAPE)


def _told(material: Material, card: Card, firing: Firing, wrong: Callable[[str, str], None]) -> None:
    """The sentence as the person would read it."""
    if not card.says:
        return
    places: dict[str, Place] = {}
    for garment in material.garments.values():
        places |= garment.places
    values: dict[str, Any] = dict(firing.bindings)
    values.update({name: call(reckon, firing.bindings) for name, reckon in card.reckons.items()})
    said = Teller(INCH_TAPE, places).say(card.says, values)
    for what, hint in sentence_faults(said):
        wrong(f"is told as '{said}', which {what}", f"{hint}; {{role}} and state words are code, {{place}} is not")


def _facts(material: Material, book: Book, id: str, what: str, facts: Iterable[SlotFact]) -> None:
    """Facts that no garment can have."""
    for fact in facts:
        for fault, hint in fact_faults(material, fact):
            book.error(material.where(id), f"{what}: {fault}", hint, material.line(id, what.split("'")[1]))


def fact_faults(material: Material, fact: SlotFact) -> list[tuple[str, str]]:
    """Why no garment can have this fact, each with a hint."""
    wrong = [(fault, "mend the fact") for fault in fact.faults()]
    if wrong:
        return wrong
    if isinstance(fact, Measure | Trait):
        word = fact.word if isinstance(fact, Trait) else ""
        wrong += filter(None, [word_fault(material, type(fact), fact.role, fact.slot, word)])
        if fact.key != f"{fact.place}.{fact.slot}":
            wrong.append((f"its key is '{fact.key}'", f"write '{fact.place}.{fact.slot}'"))
    if isinstance(fact, Joined):
        wrong += filter(None, [word_fault(material, Measure, fact.role, fact.slot, "")])
        wrong += filter(None, [word_fault(material, Measure, fact.other_role, "", "")])
        wrong += _place_faults(material, fact.other, fact.other_role)
    if isinstance(fact, Problem | Offer) and fact.name not in material.problems and "findings" not in material.unread:
        wrong.append((f"no finding finds '{fact.name}'", nearest(fact.name, material.problems)))
    if isinstance(fact, Offer) and fact.fix not in material.fixes and "fixes" not in material.unread:
        wrong.append((f"no fix '{fact.fix}'", nearest(fact.fix, material.fixes)))
    return wrong + _place_faults(material, fact["place"], fact["role"])


def _place_faults(material: Material, place: str, role: str) -> list[tuple[str, str]]:
    known = {p.name: p.role for garment in material.garments.values() for p in garment.places.values()}
    if known.get(place) == role:
        return []
    if any(g.places[place].role == role for g in material.garments.values() if place in g.places):
        return []
    hint = nearest(place, [name for name, each in known.items() if each == role] or known)
    return [(f"no garment has a '{role}' called '{place}'", hint)]


def _near_words(material: Material, book: Book, id: str, card: Card, near: Near) -> None:
    what = f"near miss '{near.words}'"
    _facts(material, book, id, what, near.adding)
    if near.adding or near.without:
        return
    old = card.fires[0].facts[near.at]
    new = type(old)(**{**old, **near.changes})
    faults = [(fault, "mend the fact") for fault in new.faults()]
    if not faults and isinstance(new, Measure | Trait):
        role = new.role if {"slot", "word"} & set(near.changes) or "role" in near.changes else ""
        slot = new.slot if "role" not in near.changes else ""
        word = new.word if isinstance(new, Trait) and "word" in near.changes else ""
        faults += filter(None, [word_fault(material, type(new), role, slot, word)])
    if not faults and isinstance(new, Joined):
        faults += [f for role in (new.role, new.other_role) for f in [word_fault(material, Measure, role, "", "")] if f]
    if not faults and isinstance(new, Problem | Offer) and {"name", "fix"} & set(near.changes):
        faults += [each for each in fact_faults(material, new) if each[0].startswith(("no finding finds", "no fix"))]
    for fault, hint in faults:
        book.error(material.where(id), f"{what}: {fault}", hint, material.line(id, near.words))
