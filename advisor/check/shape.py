"""Looking into the patterns of a condition: its literals, its tests, the names it binds, and looser copies of it."""

import inspect
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from types import CodeType
from typing import Any

from advisor.core.model import Join, place_of, slot_of
from advisor.engine import MATCH, NOT, TEST, SlotFact
from advisor.engine.experta_shim import AND, ANDFC, EXISTS, FORALL, OR, ConditionalElement, FieldConstraint, L, P, W
from advisor.knowledge.facts import Joined
from advisor.rulebase.garment import Garment


@dataclass(frozen=True)
class Field:
    """One slot of one pattern: the words it allows (None: not known), the name it binds, whether it constrains."""

    slot: str
    words: frozenset[str] | None
    name: str
    constrains: bool


def patterns(element: Any, inside: bool = False) -> Iterator[tuple[SlotFact, bool]]:
    """Every fact pattern in a condition, and whether it stands inside a NOT or its like, which binds nothing."""
    if isinstance(element, SlotFact):
        yield element, inside
    elif isinstance(element, ConditionalElement) and not isinstance(element, TEST | FieldConstraint):
        closed = inside or isinstance(element, NOT | EXISTS | FORALL)
        for part in element:
            yield from patterns(part, closed)


def fields(pattern: SlotFact) -> Iterator[Field]:
    """The slots a pattern names."""
    for slot, value in sorted(pattern.items()):
        if slot != "__bind__":
            yield Field(slot, _words(value), _name(value), not isinstance(value, W))


def words_of(pattern: SlotFact, slot: str) -> frozenset[str] | None:
    """The words a pattern allows in `slot`; None if it leaves it open."""
    return _words(pattern[slot]) if slot in pattern else None


def fits(garment: Garment, join: Join, pattern: Joined) -> bool:
    """Whether a join of this garment may be the one a pattern asks for, whatever its lengths."""
    seen = {
        "kind": join.kind,
        "relation": join.relation,
        "role": garment.places[place_of(join.a)].role,
        "slot": slot_of(join.a),
        "other_role": garment.places[place_of(join.b)].role,
    }
    wanted = {slot: words_of(pattern, slot) for slot in seen}
    return all(words is None or seen[slot] in words for slot, words in wanted.items())


def bound(elements: Iterator[Any] | tuple[Any, ...]) -> dict[str, tuple[SlotFact, str]]:
    """The names these conditions bind for what comes after, each with its first pattern and slot."""
    found: dict[str, tuple[SlotFact, str]] = {}
    for element in elements:
        for pattern, inside in patterns(element):
            for field in fields(pattern):
                if field.name and not inside:
                    found.setdefault(field.name, (pattern, field.slot))
    return found


@lru_cache(maxsize=8192)
def asked(function: Callable[..., Any]) -> tuple[str, ...]:
    """The names a function asks for."""
    return tuple(inspect.signature(function).parameters)


def texts_in(function: Callable[..., Any]) -> frozenset[str]:
    """The words a predicate compares with: those written in it, and those of the collections it names."""
    code = getattr(function, "__code__", None)
    if not isinstance(code, CodeType):
        return frozenset()
    named = [getattr(function, "__globals__", {}).get(name) for name in code.co_names]
    listed = [each for each in named if isinstance(each, frozenset | set | tuple | list | dict)]
    return frozenset(_texts(code)).union(word for words in listed for word in words if isinstance(word, str))


def looser(element: Any) -> Iterator[tuple[str, Any]]:
    """Copies of a condition, each with one slot's constraint dropped, as (slot, copy). Names stay bound."""
    if isinstance(element, SlotFact):
        for field in fields(element):
            if field.constrains:
                value = getattr(MATCH, field.name) if field.name else None
                slots = {slot: each for slot, each in element.items() if slot != field.slot}
                if value is not None:
                    slots[field.slot] = value
                yield field.slot, type(element)(**slots)
    elif isinstance(element, OR | AND):
        for index, part in enumerate(element):
            for slot, copy in looser(part):
                yield slot, type(element)(*(copy if at == index else each for at, each in enumerate(element)))


def _words(value: Any) -> frozenset[str] | None:
    if isinstance(value, str):
        return frozenset({value})
    if isinstance(value, L):
        return _words(value.value)
    if isinstance(value, P):
        words = getattr(value.match, "__self__", None)  # one_of() hands over the method of a set of words
        return words if isinstance(words, frozenset) else None
    if isinstance(value, ANDFC):
        known = [words for words in map(_words, value) if words is not None]
        return frozenset.intersection(*known) if known else None
    if isinstance(value, FieldConstraint) and not isinstance(value, W):
        known = [words for words in map(_words, value) if words is not None]
        return frozenset().union(*known) if known else None
    return None


def _name(value: Any) -> str:
    if isinstance(value, ANDFC):
        return next((name for name in map(_name, value) if name), "")
    return str(getattr(value, "__bind__", None) or "") if isinstance(value, W | P | L) else ""


def _texts(code: CodeType) -> Iterator[str]:
    for constant in code.co_consts:
        if isinstance(constant, str):
            yield constant
        elif isinstance(constant, frozenset | tuple):
            yield from (each for each in constant if isinstance(each, str))
        elif isinstance(constant, CodeType):
            yield from _texts(constant)
