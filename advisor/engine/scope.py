"""Which names a rule's conditions bind, where each is used, and what uses a name nothing binds."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from advisor.engine.facts import SlotFact
from advisor.engine.rules import RuleSpec, parameters
from advisor.engine.shape import Branch, Group, Item, Pattern, Reader, Test
from advisor.errors import nearest

Kind = type
"""What a name is bound to: str, int, Fraction, or the class of a whole fact."""


@dataclass
class _Scope:
    """The names bound so far in one branch, and those that only a group inside it has used."""

    reader: Reader
    bound: dict[str, Kind]
    inside: dict[str, str]

    def walk(self, items: Iterable[Item], outer: bool) -> None:
        for item in items:
            match item:
                case Pattern():
                    self._pattern(item, outer)
                case Test():
                    self._test(item)
                case Group():
                    self._group(item)

    def _pattern(self, pattern: Pattern, outer: bool) -> None:
        if pattern.bind is not None:
            if pattern.bind in self.bound:
                raise self.reader.error(f"AS.{pattern.bind} is bound twice", "choose another name")
            self._bind(pattern.bind, pattern.cls, outer)
        for slot, name in pattern.names:
            self._bind(name, pattern.cls.__fields__[slot].kind, outer)
        for slot, name in pattern.differs:
            if name not in self.bound:
                raise self.reader.error(
                    f"{pattern.cls.__name__}.{slot} must differ from {name!r}, which nothing before it binds",
                    nearest(name, self.bound),
                )
            self._agree(name, pattern.cls.__fields__[slot].kind)

    def _bind(self, name: str, kind: Kind, outer: bool) -> None:
        if name in self.bound:
            self._agree(name, kind)
        elif outer and name in self.inside:
            raise self.reader.error(
                f"{name!r} is used inside {self.inside[name]} before the pattern that binds it",
                "put the pattern that binds it first",
            )
        self.bound[name] = kind

    def _agree(self, name: str, kind: Kind) -> None:
        if self.bound[name] is not kind:
            raise self.reader.error(
                f"{name!r} stands for {_called(self.bound[name])} and for {_called(kind)}, which are never equal",
                "use two names",
            )

    def _test(self, test: Test) -> None:
        for name in test.names:
            if name not in self.bound:
                raise self.reader.error(
                    f"a TEST asks for {name!r}, which nothing before it binds", nearest(name, self.bound)
                )

    def _group(self, group: Group) -> None:
        for way in group.ways:
            within = _Scope(self.reader, dict(self.bound), {})
            within.walk(way, outer=False)
            for name in {*within.bound, *within.inside} - self.bound.keys():
                self.inside.setdefault(name, group.kind)


def _called(kind: Kind) -> str:
    return f"a whole {kind.__name__}" if issubclass(kind, SlotFact) else f"{kind.__name__} values"


def check_names(reader: Reader, spec: RuleSpec, branches: tuple[Branch, ...]) -> tuple[str, ...]:
    """Refuse names used but not bound; answer the names the action gets, in order of binding.

    A name must be bound in every alternative of an OR to count as bound for the action.
    """
    common: dict[str, Kind] | None = None
    for branch in branches:
        scope = _Scope(reader, {}, {})
        scope.walk((item for _, item in branch), outer=True)
        if common is None:
            common = scope.bound
        else:
            for name in common.keys() & scope.bound.keys():
                scope._agree(name, common[name])
            common = {name: kind for name, kind in common.items() if name in scope.bound}
    bound = common or {}
    asked = parameters(spec.action)
    for name in asked.required:
        if name not in bound:
            raise reader.error(f"the action asks for {name!r}, which nothing binds", nearest(name, bound))
    if asked.everything:
        return tuple(bound)
    return tuple(name for name in asked.named if name in bound)
