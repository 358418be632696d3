"""A world: every key of the garment with a definite value. The engine never sees an unknown."""

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from itertools import count
from types import MappingProxyType

from advisor.advise.kept import Kept
from advisor.core.case import Case, Known, Unknown
from advisor.core.model import Join, Key, Mm, Model, Value, place_of, slot_of
from advisor.errors import CaseError, nearest
from advisor.lengths import TAPES, Tape
from advisor.rulebase.garment import Garment, Term


@dataclass(frozen=True)
class Reckoned:
    """A measure that was worked out: its terms (sign, key or "", mm), and what it was compared with."""

    terms: tuple[tuple[int, Key, Mm], ...]
    rivals: tuple[Mm, ...] = ()


@dataclass(frozen=True)
class World:
    """`given`: what was answered or supposed; `assumed`: the asked-for keys whose neutral stands in.

    `model` is the garment complete; `reckoned` tells how its worked-out measures came about.
    """

    garment: Garment
    tape: Tape
    model: Model
    given: Mapping[Key, Value]
    how: Mapping[Key, Known]
    assumed: frozenset[Key]
    unknown: frozenset[Key]
    reckoned: Mapping[Key, Reckoned]
    origin: tuple[Model, int] | None = field(default=None, repr=False, compare=False)

    @cached_property
    def token(self) -> Hashable:
        """Equal for worlds that are the same to advice (but not always for worlds made in different ways)."""
        given = frozenset(self.given.items())
        # As `world_of` made it, the garment follows from what is given; put in by hand, it must speak for itself.
        made = self.origin is not None and self.origin[0] is self.model
        model = self.origin[1] if made and self.origin is not None else self.model.digest()
        return (self.garment.id, model, self.tape, self.assumed, self.unknown, given)


class _Layout:
    """What the worlds of one garment type have in common, worked out once.

    Values that do not change from world to world stay the very same objects, by which a sweep sees what differs.
    """

    def __init__(self, garment: Garment) -> None:
        self.garment = garment
        # All keys, so that all worlds have them in the same order; what takes another's value is filled in later.
        self.starts = {key: Mm(0) if isinstance(start, str) else start for key, start in garment.measures.items()}
        self.lent = tuple(key for key, start in garment.measures.items() if isinstance(start, str))
        self.asked = frozenset(garment.questions)
        self.number = next(_fresh)
        self.joins: dict[Tape, tuple[Join, ...]] = {}
        self.last: dict[Key, _Sum] = {}

    def joins_on(self, tape: Tape) -> tuple[Join, ...]:
        """The garment's joins, with the slack that this tape forgives."""
        if tape not in self.joins:
            self.joins[tape] = tuple(_with_slack(join, slack, tape) for join, slack in self.garment.joins)
        return self.joins[tape]


_Terms = tuple[tuple[Term, Mm], ...]


@dataclass(frozen=True)
class _Sum:
    """A reckoned measure as it was worked out last: from which terms, what it came to, how far ways differ."""

    ways: tuple[_Terms, ...]
    mm: Mm
    apart: Mm
    reckoned: Reckoned

    def is_of(self, ways: tuple[_Terms, ...]) -> bool:
        """Whether it was worked out from these very objects."""
        return len(ways) == len(self.ways) and all(
            mine[0] is other[0] and mine[1] is other[1]
            for one, two in zip(ways, self.ways, strict=True)
            for mine, other in zip(one, two, strict=False)
        )


# By the identity of the garment, which is kept beside it so that no other can take it.
_layouts: Kept[_Layout] = Kept(64)
_fresh = count(1)


def _layout(garment: Garment) -> _Layout:
    return _layouts.get(id(garment)) or _layouts.put(id(garment), _Layout(garment))


def world_of(case: Case, garment: Garment, suppose: Mapping[Key, Value] | None = None) -> World:
    """The world of a case, with `suppose` put in place of (or beside) its answers.

    CaseError if an answer's key is none of the garment's.
    """
    known = {key: answer for key, answer in case.answers.items() if isinstance(answer, Known)}
    given: dict[Key, Value] = {key: answer.value for key, answer in known.items()}
    if not case.limits.buttonholes:
        given.update((key, "no") for key in _machine_holes(garment) if key not in given)
    given.update(suppose or {})
    for key in given:
        if key not in garment.questions:
            raise CaseError(f"the garment has no '{key}'", where=case.title, hint=nearest(key, garment.questions))
    given = {key: value for key, value in given.items() if meant(garment, key, given)}
    layout, tape = _layout(garment), TAPES[case.tape]
    measures, states = _measures(layout, given), _states(garment, given)
    for key, entry in garment.by_word.items():
        measures[key] = entry.lengths[states[entry.state]]
    reckoned = _reckon(layout, given, measures)
    unknown = {key for key, answer in case.answers.items() if isinstance(answer, Unknown)} - set(suppose or {})
    model = Model(
        places=garment.places,
        measures=MappingProxyType(measures),
        states=MappingProxyType(states),
        joins=layout.joins_on(tape),
        crossings=garment.crossings,
    )
    return World(
        garment=garment,
        tape=tape,
        model=model,
        given=MappingProxyType(given),
        how=MappingProxyType(known),
        assumed=layout.asked.difference(given),
        unknown=frozenset(unknown),
        reckoned=MappingProxyType(reckoned),
        origin=(model, layout.number),
    )


def _machine_holes(garment: Garment) -> tuple[Key, ...]:
    """The questions whether the machine makes buttonholes; a limit answers them too."""
    return tuple(
        key
        for key in garment.questions
        if slot_of(key) == "buttonholes" and garment.places[place_of(key)].role == "bench"
    )


def meant(garment: Garment, key: Key, given: Mapping[Key, Value]) -> bool:
    """Whether an answer to `key` means anything: what it comes after was not answered otherwise.

    How far a seam is too low means nothing once she has said that it sits right.
    """
    return all(given.get(gate, words[0]) in words for gate, words in garment.questions[key].after)


def _with_slack(join: Join, slack: Mm | None, tape: Tape) -> Join:
    # Half a mark: what the tape cannot show is forgiven, one whole mark is not.
    return replace(join, slack=tape.mark / 2 if slack is None else slack)


def _states(garment: Garment, given: Mapping[Key, Value]) -> dict[Key, str]:
    states = dict(garment.states)
    states.update((key, str(value)) for key, value in given.items() if key in states)
    return states


def _measures(layout: _Layout, given: Mapping[Key, Value]) -> dict[Key, Mm]:
    measures, known = dict(layout.starts), layout.garment.measures
    measures.update((key, value) for key, value in given.items() if key in known and not isinstance(value, str))
    for key in layout.lent:
        measures[key] = _lent(layout.garment, key, given)
    return measures


def _lent(garment: Garment, key: Key, given: Mapping[Key, Value]) -> Mm:
    """The value of a key that takes another's until it is known itself."""
    seen: list[Key] = []
    while True:
        value = given.get(key, garment.measures[key])
        if not isinstance(value, str):
            return value
        seen.append(key)
        if value in seen:
            raise CaseError(f"{value} stands in for itself", where=garment.id)
        key = value


def _reckon(layout: _Layout, given: Mapping[Key, Value], measures: dict[Key, Mm]) -> dict[Key, Reckoned]:
    """Works out the reckoned measures in place, first way with evidence first."""
    garment = layout.garment
    found: dict[Key, Reckoned] = {}
    for key, ways in garment.reckoned.items():
        backed = [way for way in ways if _backed(garment, way, given)] or [ways[0]]
        terms = tuple(tuple((term, _mm(term, measures)) for term in way) for way in backed)
        last = layout.last.get(key)
        if last is None or not last.is_of(terms):
            last = layout.last[key] = _sum(terms)
        measures[key], found[key] = last.mm, last.reckoned
        if key in garment.compared:
            measures[garment.compared[key]] = last.apart
    return found


def _sum(ways: tuple[_Terms, ...]) -> _Sum:
    first, *rivals = (sum((term.sign * mm for term, mm in way), Mm(0)) for way in ways)
    apart = max((abs(rival - first) for rival in rivals), default=Mm(0))
    return _Sum(ways, first, apart, Reckoned(tuple((term.sign, term.key, mm) for term, mm in ways[0]), tuple(rivals)))


def _backed(garment: Garment, way: tuple[Term, ...], given: Mapping[Key, Value]) -> bool:
    """Whether the evidence this way rests on was given."""
    evidence = [t.key for t in way if t.key in garment.questions and garment.questions[t.key].evidence]
    return bool(evidence) and all(key in given for key in evidence)


def _mm(term: Term, measures: Mapping[Key, Mm]) -> Mm:
    return measures[term.key] if term.key else term.mm
