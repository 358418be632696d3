"""No rule is dead, and each comes up in a case: a person can read there when it counts and what it leads to.

Not asked of a case is what only half-done or spoiled work shows; no sensible garment does.
"""

from collections.abc import Iterator

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.offered import idle_vetoes
from advisor.check.shape import fits, patterns, words_of
from advisor.check.trials import MOST_PLANS, trials_of
from advisor.check.vocabulary import slots_of
from advisor.core.model import Key, place_of, slot_of
from advisor.engine import NOT, SlotFact
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.rulebase.garment import Garment
from advisor.rulebase.reads import looked_at, slots_read

CASE_HINT = "add a case to cases/ on which it counts, or take it out"


def check(material: Material, book: Book) -> None:
    """Rules, fixes and slots that nothing reaches."""
    dead = set(_impossible(material, book)) | idle_vetoes(material)
    trials = trials_of(material)
    for id in sorted(material.sound - trials.fired - dead):
        book.error(material.where(id), "no case or probe reaches it", CASE_HINT)
    for id in sorted(set(material.fixes) - trials.offered):
        book.error(material.where(id), "no case or probe is offered this fix", CASE_HINT)
    for id in sorted(trials.in_worlds - trials.in_cases):
        book.error(material.where(id), "comes up in no case, only in trials", CASE_HINT)
    if trials.plans >= MOST_PLANS:
        book.note("rules", f"probing stopped after {trials.plans} plans", "what follows may be reached all the same")
    _unread(material, book)


def _impossible(material: Material, book: Book) -> Iterator[str]:
    """Rules with a condition that no garment there is can meet."""
    for id in sorted(material.sound):
        for condition in material.rules[id].conditions():
            if isinstance(condition.element, NOT) or not isinstance(condition.element, SlotFact):
                continue
            for pattern, _ in patterns(condition.element):
                if not any(_has(material, garment, pattern) for garment in material.garments.values()):
                    book.error(
                        material.where(id), f"condition '{condition.words}': no garment has such a {_kind(pattern)}",
                        "see rules/garments for the joins and places there are", material.line(id, condition.words),
                    )  # fmt: skip
                    yield id


def _kind(pattern: SlotFact) -> str:
    return "join" if isinstance(pattern, Joined) else "place"


def _has(material: Material, garment: Garment, pattern: SlotFact) -> bool:
    roles, slots = words_of(pattern, "role"), words_of(pattern, "slot")
    if isinstance(pattern, Joined):
        return any(fits(garment, join, pattern) for join, _ in garment.joins)
    if isinstance(pattern, Measure | Trait):
        return any(
            (roles is None or place.role in roles)
            and (slots is None or slots & slots_of(material, place.role, type(pattern)).keys())
            for place in garment.places.values()
        )
    return True


def _unread(material: Material, book: Book) -> None:
    """Slots somebody is asked for, or work writes, and nothing looks at."""
    rules = frozenset(pair for card in material.rules.values() for pair in slots_read(card))
    shape = material.grades.shape if material.grades else None
    graded = (
        {(each.role, each.slot) for each in shape.shift} | {(each.role, each.slot) for each in shape.cap}
        if shape
        else set()
    )
    used: set[tuple[str, str]] = set()
    for garment in material.garments.values():
        for key in {*_keys_used(garment), *trials_of(material).reads}:
            if place_of(key) in garment.places:
                used.add((garment.places[place_of(key)].role, slot_of(key)))
    present = {place.role for garment in material.garments.values() for place in garment.places.values()}
    for role in sorted(present):
        for slot in (*material.roles[role].slots, *material.roles[role].states, *material.roles[role].measures):
            if not looked_at(role, slot, rules) and (role, slot) not in used | graded:
                where = material.where(material.folder / "roles" / f"{role}.toml")
                book.note(where, f"no rule, fix or join looks at '{slot}'", "let a rule look at it, or take it out")


def _keys_used(garment: Garment) -> Iterator[Key]:
    """Keys the garment itself needs: joins, sums, what stands in for another, what must be answered before."""
    for join, _ in garment.joins:
        yield from (join.a, join.b, *(key for key, _ in join.when))
    for ways in garment.reckoned.values():
        yield from (term.key for way in ways for term in way if term.key)
    yield from (entry.state for entry in garment.by_word.values())
    yield from (start for start in garment.measures.values() if isinstance(start, str))
    yield from (gate for question in garment.questions.values() for gate, _ in question.after)
