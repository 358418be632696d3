"""What a fix may read when it is sized: the garment as earlier work leaves it, by role and slot."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import TypeVar

from advisor.core.figure import Figure, taken
from advisor.core.model import Crossing, Key, Mm, Model
from advisor.errors import KnowledgeError, nearest
from advisor.lengths import Tape

V = TypeVar("V")


@dataclass(frozen=True)
class Trouble:
    """The problem a fix is sized for: its finding, place, role and amount (mm, 0 where it has none)."""

    finding: str
    problem: str
    place: str
    role: str
    mm: Mm


class Watched(Mapping[Key, V]):
    """A mapping that notes each key whose value, or presence, was asked for."""

    def __init__(self, under: Mapping[Key, V], reads: set[Key]) -> None:
        self.under, self.reads = under, reads

    def __getitem__(self, key: Key) -> V:
        self.reads.add(key)
        return self.under[key]

    def __iter__(self) -> Iterator[Key]:
        return iter(self.under)

    def __len__(self) -> int:
        return len(self.under)


@dataclass(frozen=True)
class View:
    """The garment (`model`), and the tape that splits and roundings must fit.

    `reads` collects the keys looked at: an answer nothing looks at cannot matter.
    """

    model: Model
    tape: Tape
    reads: set[Key] = field(default_factory=set, compare=False)

    @classmethod
    def watching(cls, model: Model, tape: Tape) -> "View":
        """A view whose `reads` collects every key looked at, through `model` too."""
        reads: set[Key] = set()
        watched = replace(model, measures=Watched(model.measures, reads), states=Watched(model.states, reads))
        return cls(watched, tape, reads)

    def one(self, role: str) -> str:
        """The first place of `role`, by name. KnowledgeError if the garment has none."""
        for name in sorted(self.model.places):
            if self.model.places[name].role == role:
                return name
        roles = {place.role for place in self.model.places.values()}
        raise KnowledgeError(f"no place has the role '{role}'", hint=nearest(role, roles))

    def has(self, role: str) -> bool:
        """Whether the garment has a place of `role`."""
        return any(place.role == role for place in self.model.places.values())

    def mm(self, key: Key) -> Mm:
        """A measure, mm. KnowledgeError for a key the garment does not have."""
        if key not in self.model.measures:
            raise KnowledgeError(f"no measure '{key}'", hint=nearest(key, self.model.measures))
        return self.model.measures[key]

    def word(self, key: Key) -> str:
        """A state. KnowledgeError for a key the garment does not have."""
        if key not in self.model.states:
            raise KnowledgeError(f"no state '{key}'", hint=nearest(key, self.model.states))
        return self.model.states[key]

    def measure(self, key: Key) -> Figure:
        """A measure as a figure, for formulas that take it as input."""
        return taken(key, self.mm(key), key)

    def words(self, place: str) -> str:
        """What a place is called."""
        return self.model.places[place].words

    def across(self, seam: str) -> tuple[Crossing, ...]:
        """The lengths that run across a seam."""
        return self.model.across(seam)


def amount(trouble: Trouble, id: str = "amount") -> Figure:
    """The amount of the problem as a figure."""
    return taken(id, trouble.mm, trouble.finding)


def plain(id: str, mm: Fraction, source: str) -> Figure:
    """A length fixed by the trade (mm), with the source it has."""
    return Figure(id, mm, "by the trade", (), source)
