"""The one adapter between the garment and the engine's facts."""

from collections.abc import Iterator

from advisor.core.model import Model, place_of, slot_of
from advisor.engine import SlotFact
from advisor.knowledge.facts import Joined, Measure, Trait


def facts_of(model: Model) -> Iterator[SlotFact]:
    """The garment as facts: every measure, every state, every join whose conditions are met."""
    for key, mm in model.measures.items():
        place = place_of(key)
        yield Measure(key=key, place=place, role=model.places[place].role, slot=slot_of(key), mm=mm)
    for key, word in model.states.items():
        place = place_of(key)
        yield Trait(key=key, place=place, role=model.places[place].role, slot=slot_of(key), word=word)
    for join in model.holding():
        place, other = place_of(join.a), place_of(join.b)
        yield Joined(
            id=join.id,
            kind=join.kind,
            relation=join.relation,
            place=place,
            role=model.places[place].role,
            slot=slot_of(join.a),
            other=other,
            other_role=model.places[other].role,
            over_mm=model.over(join),
            slack_mm=join.slack,
        )
