"""What a run comes to: the facts and why each holds, in an order that no firing order can change."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from operator import attrgetter
from typing import Any, Protocol, TypeVar

from advisor.engine.facts import SlotFact

F = TypeVar("F", bound=SlotFact)


@dataclass(frozen=True)
class Firing:
    """One firing of a rule.

    premises     the facts its patterns matched, in the order of its conditions; facts that only a NOT,
                 EXISTS or FORALL looked at are not among them
    bindings     every name bound, with its value; an AS name with the fact
    conclusions  the facts it concluded, each once
    """

    rule: str
    premises: tuple[SlotFact, ...]
    bindings: Mapping[str, object]
    conclusions: tuple[SlotFact, ...]

    def __hash__(self) -> int:
        return hash((self.rule, self.premises, self.conclusions))

    @property
    def order(self) -> tuple[Any, ...]:
        """A key that orders all firings: rule, premises, conclusions."""
        return (self.rule, [fact.order for fact in self.premises], [fact.order for fact in self.conclusions])


class Ground(Protocol):
    """Something that fired: its rule, what it concluded, and the firing made of it when it is asked for."""

    @property
    def rule_id(self) -> str: ...
    @property
    def made(self) -> tuple[SlotFact, ...] | None: ...
    def firing(self) -> Firing: ...


class Run:
    """The facts of one run, given and derived, and its firings. Immutable; put in order when first read.

    revoked  ids of rules that fired and then, in the same run, lost what they had fired on; empty if
             all that NOT, EXISTS and FORALL look at is settled in lower layers, as it should be
    """

    def __init__(self, facts: Iterable[SlotFact], grounds: Iterable[Ground] = (), revoked: Iterable[str] = ()) -> None:
        # Most that is told of a run is never asked for in a sweep; so nothing is sorted or built before it is.
        self.__dict__["_facts"] = tuple(facts)
        self.__dict__["_grounds"] = tuple(grounds)
        self.__dict__["_sorted"] = {}
        self.__dict__["_because"] = {}
        self.__dict__["revoked"] = tuple(sorted(set(revoked))) if revoked else ()

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError("a Run cannot be changed")

    def __delattr__(self, name: str) -> None:
        raise AttributeError("a Run cannot be changed")

    _facts: tuple[SlotFact, ...]
    _grounds: tuple[Ground, ...]
    _sorted: dict[type, tuple[Any, ...]]
    _because: dict[SlotFact, tuple[Firing, ...]]
    revoked: tuple[str, ...]

    @cached_property
    def facts(self) -> tuple[SlotFact, ...]:
        """All facts, by class name and slots."""
        return tuple(sorted(self._facts, key=attrgetter("order")))

    @cached_property
    def firings(self) -> tuple[Firing, ...]:
        """All firings that hold, by rule and premises."""
        return tuple(sorted((ground.firing() for ground in self._grounds), key=attrgetter("order")))

    def of(self, cls: type[F]) -> tuple[F, ...]:
        """The facts of one class, in order."""
        found = self._sorted.get(cls)
        if found is None:
            mine = [fact for fact in self._facts if fact.__class__ is cls]
            found = tuple(sorted(mine, key=attrgetter("ranked")))
            self._sorted[cls] = found
        return found

    def justifications(self, fact: SlotFact) -> tuple[Firing, ...]:
        """The firings that concluded `fact`; none for a fact that was only given."""
        found = self._because.get(fact)
        if found is None:
            grounds = self._by_fact.get(fact, ())
            found = tuple(sorted((ground.firing() for ground in grounds), key=attrgetter("order")))
            self._because[fact] = found
        return found

    def concluded_by(self, fact: SlotFact) -> tuple[str, ...]:
        """The rules of `justifications`, in the same order, each once; quicker."""
        grounds = self._by_fact.get(fact, ())
        if len(grounds) == 1:
            return (grounds[0].rule_id,)
        return tuple(sorted({ground.rule_id for ground in grounds}))

    @cached_property
    def _by_fact(self) -> Mapping[SlotFact, list[Ground]]:
        found: dict[SlotFact, list[Ground]] = {}
        for ground in self._grounds:
            made = ground.made or ()
            # Each once: a rule may answer the same fact twice.
            for fact in made if len(made) == 1 else dict.fromkeys(made):
                found.setdefault(fact, []).append(ground)
        return found

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Run) and self.facts == other.facts and self.firings == other.firings

    def __hash__(self) -> int:
        return hash((self.facts, self.firings))

    def __repr__(self) -> str:
        return f"Run({len(self._facts)} facts, {len(self._grounds)} firings)"
