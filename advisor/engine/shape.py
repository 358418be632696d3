"""A rule's conditions, read once into plain shapes; whatever cannot work is refused here.

experta lets most mistakes pass in silence: a misspelt slot never matches, a name in a TEST that nothing
binds is None. Here each is a KnowledgeError that names the rule, what is wrong and the nearest word.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import product
from typing import Any, Literal

from advisor.engine import experta_shim as ex
from advisor.engine.facts import SlotFact
from advisor.errors import KnowledgeError, nearest

Sieve = Callable[[Any], Any]
MOST_BRANCHES = 64


@dataclass(frozen=True)
class FieldTest:
    """A test of one slot's value that needs nothing else. `key` is equal for tests that are the same."""

    slot: str
    passes: Sieve
    key: tuple[Any, ...]
    source: Any


@dataclass(frozen=True)
class Pattern:
    """One fact: literal slots, tests, names bound to slots or to the fact, names a slot must differ from.

    sieves  what shuts out facts that a TEST further down will never let pass
    """

    cls: type[SlotFact]
    bind: str | None
    literals: tuple[tuple[str, Any], ...]
    tests: tuple[FieldTest, ...]
    names: tuple[tuple[str, str], ...]
    differs: tuple[tuple[str, str], ...]
    present: tuple[str, ...]
    sieves: tuple[Callable[[SlotFact], bool], ...] = ()


@dataclass(frozen=True)
class Test:
    """A function of bound names."""

    function: Callable[..., Any]
    names: tuple[str, ...]


@dataclass(frozen=True)
class Group:
    """Holds if none (or, not `negated`, any) of its `ways` has a solution. Its names stay inside."""

    kind: Literal["NOT", "EXISTS", "FORALL"]
    negated: bool
    ways: tuple[tuple[Item, ...], ...]


Item = Pattern | Test | Group
Branch = tuple[tuple[int, Item], ...]


@dataclass
class _Slots:
    """What one pattern's slots come to, gathered constraint by constraint."""

    literals: dict[str, Any] = field(default_factory=dict)
    tests: list[FieldTest] = field(default_factory=list)
    names: list[tuple[str, str]] = field(default_factory=list)
    differs: list[tuple[str, str]] = field(default_factory=list)


class Reader:
    """Reads the conditions of one rule; `where` names the rule in every refusal."""

    def __init__(self, where: str, classes: frozenset[type[SlotFact]] | None = None) -> None:
        self.where = where
        self.classes = classes

    def branches(self, conditions: tuple[Any, ...]) -> tuple[Branch, ...]:
        """The conditions as alternatives without OR; each item with the index of its condition."""
        ways: list[list[Branch]] = []
        for index, condition in enumerate(conditions):
            ways.append([tuple((index, item) for item in way) for way in self.ways(condition)])
        return tuple(sum(choice, ()) for choice in self._product(ways))

    def ways(self, condition: Any) -> list[tuple[Item, ...]]:
        """One condition as alternatives without OR."""
        match condition:
            case SlotFact():
                return [(self.pattern(condition),)]
            case ex.TEST():
                return [(self.test(condition),)]
            case ex.AND():
                return self._all(self._parts(condition))
            case ex.OR():
                return [way for part in self._parts(condition) for way in self.ways(part)]
            case ex.NOT():
                return [(Group("NOT", True, tuple(self._all(self._parts(condition)))),)]
            case ex.EXISTS():
                return [(Group("EXISTS", False, tuple(self._all(self._parts(condition)))),)]
            case ex.FORALL():
                return [(self._forall(condition),)]
        raise self.error(
            f"a condition cannot be {self._called(condition)}",
            "conditions are patterns such as Measure(key='hem'), TEST, NOT, EXISTS, FORALL, OR and AND",
        )

    def _forall(self, condition: Any) -> Group:
        if len(condition) < 2:
            raise self.error("FORALL needs a pattern and what must hold for each of its facts", "add it")
        lacking = tuple(self._all(condition[1:]))
        leads = self.ways(condition[0])
        return Group("FORALL", True, tuple((*lead, Group("NOT", True, lacking)) for lead in leads))

    def _parts(self, condition: Any) -> Any:
        if not condition:
            raise self.error(f"an empty {type(condition).__name__}()", "put a condition inside")
        return condition

    def _all(self, parts: Any) -> list[tuple[Item, ...]]:
        return [sum(choice, ()) for choice in self._product([self.ways(part) for part in parts])]

    def _product(self, ways: list[list[Any]]) -> Iterator[tuple[Any, ...]]:
        count = 1
        for each in ways:
            count *= len(each)
        if count > MOST_BRANCHES:
            raise self.error(
                f"its ORs multiply out to {count} alternatives, more than {MOST_BRANCHES}",
                "write one rule each, or one predicate with `or` inside",
            )
        return product(*ways)

    def test(self, condition: Any) -> Test:
        """A TEST, whose function takes bound names and nothing else."""
        if len(condition) != 1 or not callable(condition[0]):
            raise self.error("TEST takes one function", "write TEST(lambda name: ...)")
        names = []
        for parameter in inspect.signature(condition[0]).parameters.values():
            if parameter.kind not in (parameter.POSITIONAL_OR_KEYWORD, parameter.KEYWORD_ONLY):
                raise self.error(f"a TEST takes {parameter}", "name each parameter after a bound name")
            if parameter.default is not parameter.empty:
                raise self.error(
                    f"a TEST gives its parameter {parameter.name!r} a default, which would never be used",
                    "take the value from outside with a closure",
                )
            names.append(parameter.name)
        if not names:
            raise self.error("a TEST asks for no bound name", "it could only ever be true or false")
        return Test(condition[0], tuple(names))

    def pattern(self, condition: SlotFact) -> Pattern:
        """A pattern, all slots checked against its class."""
        cls = type(condition)
        if self.classes is not None and cls not in self.classes:
            known = {each.__name__ for each in self.classes}
            raise self.error(f"{cls.__name__} is not a fact class of this engine", nearest(cls.__name__, known))
        found = _Slots()
        named = [slot for slot in condition if slot != "__bind__"]
        for slot in named:
            if slot not in cls.__fields__:
                raise self.error(f"{cls.__name__} has no slot {slot!r}", nearest(slot, cls.slot_names))
            self._field(cls, slot, condition[slot], found)
        return Pattern(
            cls,
            condition.get("__bind__"),
            tuple(sorted(found.literals.items())),
            tuple(found.tests),
            tuple(found.names),
            tuple(found.differs),
            tuple(slot for slot in named if cls.__fields__[slot].optional),
        )

    def _field(self, cls: type[SlotFact], slot: str, value: Any, found: _Slots) -> None:
        match value:
            case ex.ANDFC():
                for part in value:
                    self._field(cls, slot, part, found)
                return
            case ex.NOTFC() if isinstance(value[0], ex.W) and value[0].__bind__ is not None:
                found.differs.append((slot, value[0].__bind__))
                return
            case ex.W():
                pass
            case ex.L() if slot not in found.literals:
                found.literals[slot] = self._literal(cls, slot, value.value)
            case ex.FieldConstraint():
                passes, key = self._sieve(cls, slot, value, top=True)
                found.tests.append(FieldTest(slot, passes, key, value))
            case _:
                found.literals[slot] = self._literal(cls, slot, value)
        name = getattr(value, "__bind__", None)
        if name is not None:
            found.names.append((slot, name))

    def _literal(self, cls: type[SlotFact], slot: str, value: Any) -> Any:
        kept = cls(**{slot: value})[slot]
        wrong = cls.__fields__[slot].fault(kept)
        if wrong:
            raise self.error(f"{cls.__name__}.{slot} {wrong}", "mend the pattern")
        return kept

    def _sieve(self, cls: type[SlotFact], slot: str, value: Any, top: bool) -> tuple[Sieve, tuple[Any, ...]]:
        """A constraint as a function of the slot's value, and what tells it from another."""
        if not top and getattr(value, "__bind__", None) is not None:
            raise self.error(
                f"{cls.__name__}.{slot} binds {value.__bind__!r} inside | or ~",
                "bind the name outside: MATCH.name & (P(...) | P(...))",
            )
        match value:
            case ex.P():
                return value.match, ("P", id(value.match))
            case ex.L():
                wanted = self._literal(cls, slot, value.value)
                return (lambda seen: bool(seen == wanted)), ("L", wanted)
            case ex.W():
                return _anything, ("W",)
            case ex.NOTFC():
                inner, key = self._sieve(cls, slot, value[0], top=False)
                return (lambda seen: not inner(seen)), ("~", key)
        parts = [self._sieve(cls, slot, part, top=False) for part in value]
        tests, keys = [part[0] for part in parts], tuple(part[1] for part in parts)
        if isinstance(value, ex.ORFC):
            return (lambda seen: any(test(seen) for test in tests)), ("|", *keys)
        return (lambda seen: all(test(seen) for test in tests)), ("&", *keys)

    def error(self, what: str, hint: str = "") -> KnowledgeError:
        """A refusal that names the rule."""
        return KnowledgeError(what, where=self.where, hint=hint)

    @staticmethod
    def _called(condition: Any) -> str:
        if isinstance(condition, type):
            return f"the class {condition.__name__} itself; write {condition.__name__}()"
        return type(condition).__name__


def _anything(_: Any) -> bool:
    return True
