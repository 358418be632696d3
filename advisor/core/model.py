"""The garment as the rules see it: measures in exact millimeters, states in words, and joins between measures.

A join is a promise of the garment (two edges sewn to each other are equally long, a closure is as long as
its opening, a loop is long enough for the body). Work changes measures and states through effects, and a
knock-on is nothing but a join that no longer holds.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from types import MappingProxyType
from typing import Literal

from advisor.core.figure import Figure

Mm = Fraction
Key = str  # "place.slot"
Value = Mm | str
Relation = Literal["equal", "at_least"]


def place_of(key: Key) -> str:
    """The place a key speaks of: `waist.pinned` -> `waist`."""
    return key.partition(".")[0]


def slot_of(key: Key) -> str:
    """The slot a key speaks of: `waist.pinned` -> `pinned`."""
    return key.partition(".")[2]


@dataclass(frozen=True)
class Place:
    """A place of the garment: its role is all that rules may ask for."""

    name: str
    role: str
    words: str


@dataclass(frozen=True)
class Join:
    """A promise between two measures: `a` equals (or is at least) `ratio` x `b`, within `slack` mm.

    It holds only while every state in `when` has one of the words given.
    """

    kind: str
    a: Key
    b: Key
    relation: Relation = "equal"
    ratio: Fraction = Fraction(1)
    slack: Mm = Mm(0)
    when: tuple[tuple[Key, tuple[str, ...]], ...] = ()

    @property
    def id(self) -> str:
        """A name for the join that is the same in every run."""
        return f"{self.kind}:{self.a}~{self.b}"


@dataclass(frozen=True)
class Crossing:
    """A length that runs across a seam: taking n out of the seam takes `times` x n out of the length."""

    seam: str
    length: Key
    times: int


@dataclass(frozen=True)
class Change:
    """A measure grows or shrinks by a reckoned amount (mm, signed)."""

    key: Key
    by: Figure

    @property
    def mm(self) -> Mm:
        """The amount, mm."""
        assert isinstance(self.by.value, Fraction)
        return self.by.value


@dataclass(frozen=True)
class Put:
    """A state takes a word."""

    key: Key
    word: str


Effect = Change | Put


@dataclass(frozen=True)
class Model:
    """One garment on one body. `measures` are mm, `states` words; both by key."""

    places: Mapping[str, Place]
    measures: Mapping[Key, Mm]
    states: Mapping[Key, str]
    joins: tuple[Join, ...] = ()
    crossings: tuple[Crossing, ...] = ()

    def apply(self, effects: Iterable[Effect]) -> "Model":
        """The garment after `effects`; this one is untouched. A key nobody declared is a KeyError."""
        measures, states = dict(self.measures), dict(self.states)
        for effect in effects:
            if isinstance(effect, Change):
                measures[effect.key] += effect.mm
            else:
                if effect.key not in states:
                    raise KeyError(effect.key)
                states[effect.key] = effect.word
        return replace(self, measures=MappingProxyType(measures), states=MappingProxyType(states))

    def holding(self) -> tuple[Join, ...]:
        """The joins whose conditions on states are met."""
        return tuple(join for join in self.joins if all(self.states.get(key) in words for key, words in join.when))

    def over(self, join: Join) -> Mm:
        """How far `a` is over `ratio` x `b`, mm; negative when under."""
        return self.measures[join.a] - join.ratio * self.measures[join.b]

    def across(self, seam: str) -> tuple[Crossing, ...]:
        """The lengths that run across `seam`."""
        return tuple(crossing for crossing in self.crossings if crossing.seam == seam)

    def digest(self) -> tuple[tuple[tuple[Key, Mm], ...], tuple[tuple[Key, str], ...]]:
        """A hashable picture of all measures and states, sorted."""
        return tuple(sorted(self.measures.items())), tuple(sorted(self.states.items()))
