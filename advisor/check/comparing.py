"""Whether the conditions of one card are all met wherever those of another are, and whether they exclude each other.

It is read off the conditions, name by name; tests that are written otherwise are tried on values instead. What is
neither read nor tried is not claimed.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from advisor.check.material import Material
from advisor.check.sampling import Bound, Test, passes, same_function, values_for, worlds
from advisor.check.shape import asked, bound, fields, words_of
from advisor.engine import NOT, P, SlotFact
from advisor.knowledge.cards import Card, Condition
from advisor.knowledge.facts import Offer, Problem, Trait

Conditions = tuple[Condition, ...]
Shown = Literal["", "written", "tried"]
Names = Mapping[
    str, "str | frozenset[str]"
]  # a name of the wide card: that of the narrow, or the words it may be there


@dataclass(frozen=True)
class _Pair:
    material: Material
    wide: Conditions
    narrow: Conditions


def includes(material: Material, wide: Conditions, narrow: Conditions, same: Names) -> Shown:
    """How it shows that `wide` are met wherever `narrow` are, if it does show. `same` are names that must agree."""
    shown: Shown = ""
    pair = _Pair(material, wide, narrow)
    # Tests come last: by then all their names are known.
    order = sorted(pair.wide, key=lambda condition: (condition.test is not None, isinstance(condition.element, NOT)))
    for tried in _ways(pair, tuple(order), same, False):
        if not tried:
            return "written"
        shown = "tried"
    return shown


def exclude(material: Material, one: Card, other: Card) -> bool:
    """Whether it shows that the two cards never hold at once."""
    return (
        any(_apart(a.element, b.element) for a in one.when for b in other.when)
        or any(_denies(a.element, b.element) for a in one.when for b in other.when)
        or any(_denies(b.element, a.element) for a in one.when for b in other.when)
        or any(_never_both(material, one, a, other, b) for a in _tests(one.when) for b in _tests(other.when))
    )


def _ways(pair: _Pair, left: Conditions, names: Names, tried: bool) -> Iterator[bool]:
    """For each way in which all that is left follows: whether something in it was tried only."""
    if not left:
        yield tried
        return
    for more, guessed in _follows(pair, left[0], names):
        yield from _ways(pair, left[1:], {**names, **more}, tried or guessed)


def _follows(pair: _Pair, wide: Condition, names: Names) -> Iterator[tuple[Names, bool]]:
    if wide.test is not None:
        yield from (({}, guessed) for guessed in _test_follows(pair, wide.test, names))
        return
    for narrow in pair.narrow:
        more: Names | None = None
        if isinstance(wide.element, SlotFact) and isinstance(narrow.element, SlotFact):
            more = _pattern_follows(wide.element, narrow.element, names)
        elif isinstance(wide.element, NOT) and isinstance(narrow.element, NOT):
            more = _refusal_follows(wide.element, narrow.element, names)
        if more is not None:
            yield more, False


def _pattern_follows(wide: SlotFact, narrow: SlotFact, names: Names) -> Names | None:
    """The names that agree, if whatever matches `narrow` matches `wide`."""
    if type(wide) is not type(narrow):
        return None
    found: dict[str, str | frozenset[str]] = {}
    there = {field.slot: field for field in fields(narrow)}
    for field in fields(wide):
        if field.constrains and not _stricter(wide[field.slot], narrow.get(field.slot)):
            return None
        if field.name:
            other = there.get(field.slot)
            to = (other.name or other.words if other else None) or f"{id(narrow)}.{field.slot}"
            if {**names, **found}.get(field.name, to) != to:
                return None
            found[field.name] = to
    return found


def _stricter(wide: Any, narrow: Any) -> bool:
    """Whether a slot's constraint lets nothing through that the other would not."""
    if narrow is None:
        return False
    allowed, known = _allowed(wide), _allowed(narrow)
    if allowed is not None:
        return known is not None and known <= allowed
    return isinstance(wide, P) and isinstance(narrow, P) and same_function(wide.match, narrow.match)


def _allowed(value: Any) -> frozenset[str] | None:
    return words_of(Trait(word=value), "word")


def _refusal_follows(wide: NOT, narrow: NOT, names: Names) -> Names | None:
    """`unless` follows from one that refuses at least as much."""
    inside, other = _single(wide), _single(narrow)
    if inside is None or type(inside) is not type(other):
        return None
    assert other is not None
    back = {to: name for name, to in names.items() if isinstance(to, str)}
    named = {field.slot: field.name for field in fields(inside) if field.name}
    for field in fields(other):
        if field.constrains and not _stricter(other[field.slot], inside.get(field.slot)):
            return None
        if field.name and named.get(field.slot) != back.get(field.name, ""):
            return None
    return {}


def _single(element: Any) -> SlotFact | None:
    """The one pattern an `unless` refuses."""
    parts = tuple(element) if isinstance(element, NOT) else ()
    return parts[0] if len(parts) == 1 and isinstance(parts[0], SlotFact) else None


def _test_follows(pair: _Pair, test: Test, names: Names) -> Iterator[bool]:
    """False if the test stands in the narrow card as it is, True if it was met on every value tried."""
    wanted = {name: names.get(name, "") for name in asked(test)}
    told = _tests(pair.narrow)
    if any(list(wanted.values()) == list(asked(other)) and same_function(test, other) for other in told):
        yield False
        return
    values = _values(pair, wanted, (test, *told))
    tried = [
        world for world in worlds(values or {}) if all(passes(t, world) for t in told if set(asked(t)) <= world.keys())
    ]
    if values is not None and tried and all(passes(test, _as_asked(wanted, world)) for world in tried):
        yield any(isinstance(to, str) for to in wanted.values())


def _values(pair: _Pair, wanted: Names, tests: tuple[Test, ...]) -> dict[str, tuple[Any, ...]] | None:
    known = bound(tuple(condition.element for condition in pair.narrow))
    values: dict[str, tuple[Any, ...]] = {}
    for name, to in wanted.items():
        if isinstance(to, frozenset):
            values[f"={name}"] = tuple(sorted(to))
            continue
        tried = values_for(pair.material, known[to], tests) if to in known else None
        if tried is None:
            return None
        values[to] = tried
    return values


def _as_asked(wanted: Names, world: Mapping[str, Any]) -> dict[str, Any]:
    return {name: world[to if isinstance(to, str) else f"={name}"] for name, to in wanted.items()}


def _tests(conditions: Conditions) -> tuple[Test, ...]:
    return tuple(condition.test for condition in conditions if condition.test is not None)


def _apart(one: Any, other: Any) -> bool:
    """Two conditions on one state with no word in common."""
    if not isinstance(one, Trait) or not isinstance(other, Trait) or _of_what(one) != _of_what(other):
        return False
    words, others = words_of(one, "word"), words_of(other, "word")
    return words is not None and others is not None and not words & others


def _denies(unless: Any, given: Any) -> bool:
    """What the one refuses, the other asks for."""
    refused = _single(unless)
    return refused is not None and isinstance(given, SlotFact) and _pattern_follows(refused, given, {}) is not None


def _never_both(material: Material, one: Card, a: Test, other: Card, b: Test) -> bool:
    """Two tests that no values pass together, a name being the same where it is the same slot of the same role."""
    left, right = _whence(one), _whence(other)
    of_a, of_b = {name: left.get(name) for name in asked(a)}, {name: right.get(name) for name in asked(b)}
    both = {each[0]: each[1] for each in (*of_a.values(), *of_b.values()) if each}
    if None in (*of_a.values(), *of_b.values()) or len(both) == len(of_a) + len(of_b):
        return False
    values = {whence: values_for(material, at, (a, b)) for whence, at in both.items()}
    tried = list(worlds({whence: each or () for whence, each in values.items()}))

    def met(test: Test, names: Mapping[str, tuple[str, Bound] | None], world: Mapping[str, Any]) -> bool:
        return passes(test, {name: world[each[0]] for name, each in names.items() if each})

    return bool(tried) and not any(met(a, of_a, world) and met(b, of_b, world) for world in tried)


def _whence(card: Card) -> dict[str, tuple[str, Bound]]:
    """Where the names of a card come from, told so that the same means the same in another card."""
    found = bound(tuple(condition.element for condition in card.conditions()))
    return {
        name: (f"{_of_what(pattern)} {slot}", (pattern, slot))
        for name, (pattern, slot) in found.items()
        if isinstance(pattern, Problem | Offer) or words_of(pattern, "role")
    }


def _of_what(pattern: SlotFact) -> str:
    told = [sorted(words_of(pattern, slot) or ()) for slot in ("role", "slot", "kind", "other_role")]
    return f"{type(pattern).__name__} {told}"
