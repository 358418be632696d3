"""What the conditions of cards look at: which slots of which roles. What nobody looks at need not be told."""

from collections.abc import Iterable, Iterator
from functools import lru_cache

from advisor.knowledge.cards import Card
from advisor.knowledge.facts import Measure, Trait

RoleSlot = tuple[str, str]  # "" stands for any


@lru_cache(maxsize=4096)
def slots_read(card: Card) -> frozenset[RoleSlot]:
    """The (role, slot) pairs the conditions of a card read; "" where a pattern leaves it open."""
    return frozenset(map(_pair, _patterns(card)))


@lru_cache(maxsize=4096)
def measures_read(card: Card) -> frozenset[RoleSlot]:
    """The (role, slot) pairs of the lengths that the conditions of a card read; "" where a pattern leaves it open."""
    return frozenset(_pair(pattern) for pattern in _patterns(card) if isinstance(pattern, Measure))


def all_read(cards: Iterable[Card]) -> frozenset[RoleSlot]:
    """What any of the cards reads."""
    return frozenset(pair for card in cards for pair in slots_read(card))


def looked_at(role: str, slot: str, wanted: frozenset[RoleSlot]) -> bool:
    """Whether a slot of a role is among `wanted`."""
    return (role, slot) in wanted or ("", slot) in wanted or (role, "") in wanted or ("", "") in wanted


def patterns(element: object) -> Iterator[object]:
    """The fact patterns inside a condition, however nested."""
    if isinstance(element, Measure | Trait):
        yield element
    elif isinstance(element, tuple | list):
        for part in element:
            yield from patterns(part)
    elif isinstance(getattr(element, "args", None), tuple):
        yield from patterns(element.args)  # type: ignore[attr-defined]


def _patterns(card: Card) -> Iterator[Measure | Trait]:
    for condition in card.conditions():
        for pattern in patterns(condition.element):
            if isinstance(pattern, Measure | Trait):
                yield pattern


def _pair(pattern: Measure | Trait) -> RoleSlot:
    return _literal(pattern, "role"), _literal(pattern, "slot")


def _literal(pattern: Measure | Trait, slot: str) -> str:
    value = pattern.get(slot, "")
    return value if isinstance(value, str) else ""
