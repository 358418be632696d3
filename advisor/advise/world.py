"""A world: every key of the garment with a definite value. The engine never sees an unknown."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from advisor.core.case import Case, Known, Unknown
from advisor.core.model import Join, Key, Mm, Model, Value
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


def world_of(case: Case, garment: Garment, suppose: Mapping[Key, Value] | None = None) -> World:
    """The world of a case, with `suppose` put in place of (or beside) its answers.

    CaseError if an answer's key is none of the garment's.
    """
    known = {key: answer for key, answer in case.answers.items() if isinstance(answer, Known)}
    given: dict[Key, Value] = {key: answer.value for key, answer in known.items()}
    given.update(suppose or {})
    for key in given:
        if key not in garment.questions:
            raise CaseError(f"the garment has no '{key}'", where=case.title, hint=nearest(key, garment.questions))
    given = {key: value for key, value in given.items() if meant(garment, key, given)}
    tape = TAPES[case.tape]
    measures, states = _measures(garment, given), _states(garment, given)
    for key, entry in garment.by_word.items():
        measures[key] = entry.lengths[states[entry.state]]
    reckoned = _reckon(garment, given, measures)
    unknown = {key for key, answer in case.answers.items() if isinstance(answer, Unknown)} - set(suppose or {})
    return World(
        garment=garment,
        tape=tape,
        model=Model(
            places=garment.places,
            measures=MappingProxyType(measures),
            states=MappingProxyType(states),
            joins=tuple(_with_slack(join, slack, tape) for join, slack in garment.joins),
            crossings=garment.crossings,
        ),
        given=MappingProxyType(given),
        how=MappingProxyType(known),
        assumed=frozenset(key for key in garment.questions if key not in given),
        unknown=frozenset(unknown),
        reckoned=MappingProxyType(reckoned),
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
    return {key: str(given.get(key, start)) for key, start in garment.states.items()}


def _measures(garment: Garment, given: Mapping[Key, Value]) -> dict[Key, Mm]:
    measures: dict[Key, Mm] = {}

    def resolve(key: Key, seen: tuple[Key, ...]) -> Mm:
        if key not in measures:
            value = given.get(key, garment.measures[key])
            if isinstance(value, str):
                if key in seen:
                    raise CaseError(f"{key} stands in for itself", where=garment.id)
                value = resolve(value, (*seen, key))
            measures[key] = value
        return measures[key]

    for key in garment.measures:
        resolve(key, ())
    return measures


def _reckon(garment: Garment, given: Mapping[Key, Value], measures: dict[Key, Mm]) -> dict[Key, Reckoned]:
    """Works out the reckoned measures in place, first way with evidence first."""
    found: dict[Key, Reckoned] = {}
    for key, ways in garment.reckoned.items():
        backed = [way for way in ways if _backed(garment, way, given)] or [ways[0]]
        values = [sum((term.sign * _mm(term, measures) for term in way), Mm(0)) for way in backed]
        measures[key] = values[0]
        terms = tuple((term.sign, term.key, _mm(term, measures)) for term in backed[0])
        found[key] = Reckoned(terms, tuple(values[1:]))
        if key in garment.compared:
            measures[garment.compared[key]] = max((abs(v - values[0]) for v in values[1:]), default=Mm(0))
    return found


def _backed(garment: Garment, way: tuple[Term, ...], given: Mapping[Key, Value]) -> bool:
    """Whether the evidence this way rests on was given."""
    evidence = [t.key for t in way if t.key in garment.questions and garment.questions[t.key].evidence]
    return bool(evidence) and all(key in given for key in evidence)


def _mm(term: Term, measures: Mapping[Key, Mm]) -> Mm:
    return measures[term.key] if term.key else term.mm
