"""What each garment makes possible, as far as it can be read: what may be found at a role, what may be offered for it.

A thing is possible on a garment if each fact the conditions ask for can be there. Which facts go together is not
looked at, so more may seem possible than is; what is impossible here is so for certain.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from advisor.check.material import Material
from advisor.check.sampling import passes
from advisor.check.shape import asked, fields, fits, words_of
from advisor.check.vocabulary import found_at, slots_of
from advisor.core.model import place_of
from advisor.engine import AND, OR, SlotFact
from advisor.knowledge.cards import Answer, Card, Veto
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.rulebase.garment import Garment


@dataclass(frozen=True, order=True)
class Spot:
    """A problem at a place of `role` on `garment`, with the findings that may find it."""

    garment: str
    problem: str
    role: str
    findings: tuple[str, ...]


def spots_of(material: Material) -> tuple[Spot, ...]:
    """Every problem each garment may have, by role, sorted; made once for each material."""
    return material.once(_spots)


def _spots(material: Material) -> tuple[Spot, ...]:
    found: dict[tuple[str, str, str], list[str]] = {}
    for problem, ids in material.problems.items():
        for id in material.sound.intersection(ids):
            card = material.rules[id]
            possible = found_at(card)
            for garment in material.garments.values():
                roles = {place.role for place in garment.places.values()}
                for role in roles if possible is None else roles & possible:
                    if can_hold(material, garment, card, role, {"role": role}):
                        found.setdefault((garment.id, problem, role), []).append(id)
    return tuple(sorted(Spot(*key, tuple(sorted(ids))) for key, ids in found.items()))


def answers_at(material: Material, spot: Spot) -> Iterator[tuple[str, Answer]]:
    """The answers that may be given there, by id."""
    garment = material.garments[spot.garment]
    for id, card in material.answers.get(spot.problem, []):
        if id in material.sound and card.role in ("", spot.role):
            known = {"role": spot.role, "name": spot.problem}
            if can_hold(material, garment, card, spot.role, known):
                yield id, card


def idle_vetoes(material: Material) -> set[str]:
    """The vetoes that can never apply: their fix is offered, but nowhere where they can hold. Made once."""
    return material.once(_idle)


def _idle(material: Material) -> set[str]:
    offers = sorted(
        {(spot.garment, spot.problem, spot.role, card.fix) for spot in spots_of(material)
         for _, card in answers_at(material, spot)}
    )  # fmt: skip
    offered = {card.fix for _, card in material.of(Answer)}
    return {
        id
        for id, veto in material.of(Veto)
        # A fix that no answer offers at all is told of by the check of the vocabulary.
        if id in material.sound
        and (not veto.fixes or not offered.isdisjoint(veto.fixes))
        and not any(_applies(material, veto, *offer) for offer in offers)
    }


def _applies(material: Material, veto: Veto, garment: str, problem: str, role: str, fix: str) -> bool:
    known = {"role": role, "name": problem, "fix": fix}
    return veto.names(fix) and can_hold(material, material.garments[garment], veto, role, known)


def can_hold(material: Material, garment: Garment, card: Card, role: str, known: Mapping[str, Any]) -> bool:
    """Whether the conditions of a card may all be met at a place of `role`, with these names `known`."""
    if not any(place.role == role for place in garment.places.values()):
        return False
    for condition in card.when:
        if condition.test is not None:
            # A test that breaks is told of by the check of examples.
            if known.keys() >= set(asked(condition.test)) and not passes(condition.test, known):
                return False
        elif not _can_be(material, garment, condition.element, role):
            return False
    return True


def _can_be(material: Material, garment: Garment, element: Any, role: str) -> bool:
    if isinstance(element, SlotFact):
        return _is_there(material, garment, element, role)
    if isinstance(element, OR):
        return any(_can_be(material, garment, part, role) for part in element)
    if isinstance(element, AND):
        return all(_can_be(material, garment, part, role) for part in element)
    return True


def _is_there(material: Material, garment: Garment, pattern: SlotFact, role: str) -> bool:
    names = {field.slot: field.name for field in fields(pattern)}
    roles, slots, words = (words_of(pattern, slot) for slot in ("role", "slot", "word"))
    here = names.get("place") == "place" or names.get("role") == "role"
    if isinstance(pattern, Joined):
        there = names.get("other") == "place"
        return any(
            fits(garment, join, pattern)
            and (not here or garment.places[place_of(join.a)].role == role)
            and (not there or garment.places[place_of(join.b)].role == role)
            for join, _ in garment.joins
        )
    if not isinstance(pattern, Measure | Trait):
        return True
    for each in {place.role for place in garment.places.values()}:
        if (here and each != role) or (roles is not None and each not in roles):
            continue
        known = slots_of(material, each, type(pattern))
        if any(words is None or words & set(known[slot]) for slot in known if slots is None or slot in slots):
            return True
    return False
