"""The one adapter between the garment and the engine's facts."""

from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache

from advisor.core.model import Join, Key, Model, place_of, slot_of
from advisor.engine import SlotFact
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.rulebase.reads import RoleSlot, looked_at

# Facts are fixed, so one that was made for one world serves in all others: a sweep asks for the same
# hundred facts hundreds of times, with one of them changed.
MADE = 65536
# What was last told of each key: while its value is the very same object, so is the fact.
_last: dict[tuple[Key, str], tuple[object, SlotFact]] = {}


def facts_of(model: Model, read: frozenset[RoleSlot]) -> Iterator[SlotFact]:
    """The garment as facts: each measure and state that some rule reads, each join whose conditions are met."""
    for key, mm in model.measures.items():
        role = model.places[place_of(key)].role
        if _wanted(role, key, read):
            kept = _last.get((key, role))
            if kept is None or kept[0] is not mm:
                kept = _last[key, role] = (mm, _measure(key, role, mm))
            yield kept[1]
    for key, word in model.states.items():
        role = model.places[place_of(key)].role
        if _wanted(role, key, read):
            yield _trait(key, role, word)
    for join in model.holding():
        roles = model.places[place_of(join.a)].role, model.places[place_of(join.b)].role
        yield _joined(join, roles, model.over(join))


@lru_cache(maxsize=MADE)
def _wanted(role: str, key: Key, read: frozenset[RoleSlot]) -> bool:
    return looked_at(role, slot_of(key), read)


@lru_cache(maxsize=MADE)
def _measure(key: Key, role: str, mm: Fraction) -> Measure:
    return Measure(key=key, place=place_of(key), role=role, slot=slot_of(key), mm=mm)


@lru_cache(maxsize=MADE)
def _trait(key: Key, role: str, word: str) -> Trait:
    return Trait(key=key, place=place_of(key), role=role, slot=slot_of(key), word=word)


@lru_cache(maxsize=MADE)
def _joined(join: Join, roles: tuple[str, str], over: Fraction) -> Joined:
    return Joined(
        id=join.id,
        kind=join.kind,
        relation=join.relation,
        place=place_of(join.a),
        role=roles[0],
        slot=slot_of(join.a),
        other=place_of(join.b),
        other_role=roles[1],
        over_mm=over,
        slack_mm=join.slack,
    )
