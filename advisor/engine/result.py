"""What a run comes to: the facts and why each holds, in an order that no firing order can change."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from operator import attrgetter
from types import MappingProxyType
from typing import Any, TypeVar

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


class Run:
    """The facts of one run, given and derived, and its firings. Immutable; put in order when first read.

    revoked  ids of rules that fired and then, in the same run, lost what they had fired on; empty if
             all that NOT, EXISTS and FORALL look at is settled in lower layers, as it should be
    """

    def __init__(
        self,
        facts: Iterable[SlotFact],
        firings: Callable[[], Iterable[Firing]] | Iterable[Firing] = (),
        revoked: Iterable[str] = (),
    ) -> None:
        self.__dict__["_facts"] = tuple(facts)
        self.__dict__["_firings"] = firings if callable(firings) else tuple(firings)
        self.__dict__["revoked"] = tuple(sorted(set(revoked)))

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError("a Run cannot be changed")

    def __delattr__(self, name: str) -> None:
        raise AttributeError("a Run cannot be changed")

    revoked: tuple[str, ...]

    @cached_property
    def facts(self) -> tuple[SlotFact, ...]:
        """All facts, by class name and slots."""
        facts: tuple[SlotFact, ...] = self.__dict__["_facts"]
        return tuple(sorted(facts, key=attrgetter("order")))

    @cached_property
    def firings(self) -> tuple[Firing, ...]:
        """All firings that hold, by rule and premises."""
        firings = self.__dict__["_firings"]
        return tuple(sorted(firings() if callable(firings) else firings, key=attrgetter("order")))

    def of(self, cls: type[F]) -> tuple[F, ...]:
        """The facts of one class, in order."""
        return self._by_class.get(cls, ())

    def justifications(self, fact: SlotFact) -> tuple[Firing, ...]:
        """The firings that concluded `fact`; none for a fact that was only given."""
        return self._by_fact.get(fact, ())

    @cached_property
    def _by_class(self) -> Mapping[type, tuple[Any, ...]]:
        found: dict[type, list[SlotFact]] = {}
        for fact in self.facts:
            found.setdefault(type(fact), []).append(fact)
        return MappingProxyType({cls: tuple(facts) for cls, facts in found.items()})

    @cached_property
    def _by_fact(self) -> Mapping[SlotFact, tuple[Firing, ...]]:
        found: dict[SlotFact, list[Firing]] = {}
        for firing in self.firings:
            for fact in firing.conclusions:
                found.setdefault(fact, []).append(firing)
        return MappingProxyType({fact: tuple(firings) for fact, firings in found.items()})

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Run) and self.facts == other.facts and self.firings == other.firings

    def __hash__(self) -> int:
        return hash((self.facts, self.firings))

    def __repr__(self) -> str:
        return f"Run({len(self.facts)} facts, {len(self.firings)} firings)"
