"""Facts with declared slots: flat, immutable, compared by class and slots.

    class Measure(SlotFact):
        key = Slot(str)
        mm = Slot(Fraction)
        edge = Slot(str, words=("raw", "bound"), optional=True)

The same call writes a fact, `Measure(key="hem", mm=Fraction(40))`, and a pattern in a rule,
`Measure(key="hem", mm=MATCH.mm)`; which of the two it is shows only where it is used. Hence a fact is
checked when it is declared and a pattern when the engine is built, never in the constructor.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from fractions import Fraction
from operator import itemgetter
from typing import TYPE_CHECKING, Any, ClassVar, Generic, NoReturn, TypeVar, overload

from advisor.engine.experta_shim import BaseField, Fact
from advisor.errors import KnowledgeError, nearest

T = TypeVar("T", str, int, Fraction)

_KINDS = (str, int, Fraction)


class Slot(BaseField, Generic[T]):
    """One slot of a fact class.

    kind      str, int or Fraction; a yes or no is a word, because experta cannot tell True from 1
    words     the only words allowed, for a str slot
    optional  the slot may be left out; read as an attribute it is then None, read by index a KeyError,
              and no pattern that names it matches

    Raises KnowledgeError for any other kind.
    """

    def __init__(self, kind: type[T], words: Iterable[str] | None = None, *, optional: bool = False) -> None:
        if kind not in _KINDS:
            raise KnowledgeError(
                f"a slot cannot hold {getattr(kind, '__name__', kind)!r}",
                hint="slots hold str, int or Fraction; write yes and no as words",
            )
        if words is not None and kind is not str:
            raise KnowledgeError("only a slot of type str has allowed words", hint="drop words=")
        self.kind: type[Any] = kind
        self.words = None if words is None else tuple(words)
        self.optional = optional

    @overload
    def __get__(self, fact: None, owner: object) -> Slot[T]: ...
    @overload
    def __get__(self, fact: SlotFact, owner: object) -> T: ...
    def __get__(self, fact: SlotFact | None, owner: object) -> Any:
        # Only tells a type checker what `fact.slot` is: the class puts a plain property in its place.
        raise NotImplementedError

    def fault(self, value: object) -> str:
        """What is wrong with `value` in this slot; empty if nothing is. Never shows a number."""
        if type(value) is not self.kind:
            return f"holds a {type(value).__name__}, wanted {self.kind.__name__}{self._remedy(value)}"
        if self.words is not None and value not in self.words:
            return f"holds {value!r}, not one of its words; {nearest(str(value), self.words)}"
        return ""

    def _remedy(self, value: object) -> str:
        if isinstance(value, bool):
            return "; write yes and no as words"
        if isinstance(value, float):
            return "; a float is not exact"
        return ""

    def validate(self, data: object) -> None:
        """experta's hook for one field. Raises KnowledgeError."""
        wrong = self.fault(data)
        if wrong:
            raise KnowledgeError(wrong)


def _refuse(self: object, *_: object, **__: object) -> NoReturn:
    raise KnowledgeError(
        f"a {type(self).__name__} cannot be changed", hint="facts are fixed; make another fact instead"
    )


class SlotFact(Fact):
    """Base of all fact classes; a class lists its slots as `name = Slot(...)`. Flat: no slot nests.

    Facts are equal if their class and slots are, whichever engine or run they came from. An engine
    stores nothing in them, so one object may be given to many runs. A pattern matches facts of exactly
    its class, not of a class derived from it.
    """

    __slots__ = ("_factid", "_hash", "_ranked", "_sound")

    slot_names: ClassVar[tuple[str, ...]] = ()
    _kinds: ClassVar[tuple[type, ...]] = ()
    _partial: ClassVar[bool] = False
    _worded: ClassVar[tuple[tuple[str, frozenset[str]], ...]] = ()

    def __init_subclass__(cls, **kwargs: Any) -> None:
        super().__init_subclass__(**kwargs)
        fields = cls.__fields__
        for name, field in fields.items():
            # The names are checked on the base class: a slot called `items` would hide dict's own.
            if not isinstance(name, str) or name.startswith("_") or "__" in name or hasattr(SlotFact, name):
                raise KnowledgeError(f"a slot cannot be named {name!r}", where=cls.__name__, hint="choose another name")
            setattr(cls, name, property(_reader(name, field.optional)))
        cls.slot_names = tuple(sorted(fields))
        cls._kinds = tuple(fields[name].kind for name in cls.slot_names)
        cls._partial = any(field.optional for field in fields.values())
        exact = tuple(name for name in cls.slot_names if fields[name].kind is Fraction)
        if exact:
            type.__setattr__(cls, "__init__", _making_exact(exact))
        cls._worded = tuple(
            (name, frozenset(fields[name].words)) for name in cls.slot_names if fields[name].words is not None
        )

    if TYPE_CHECKING:

        def __init__(self, **slots: Any) -> None: ...
    else:
        # Facts are made by the thousand; only classes with Fraction slots have more to do than dict.
        __init__ = dict.__init__

    # experta writes the number of a declared fact into the fact, where it would count as a slot.
    @property
    def __factid__(self) -> int | None:
        return getattr(self, "_factid", None)

    @__factid__.setter
    def __factid__(self, number: int | None) -> None:
        self._factid = number

    if not TYPE_CHECKING:
        __setitem__ = __delitem__ = __ior__ = update = pop = popitem = clear = setdefault = _refuse

    def __missing__(self, key: str) -> NoReturn:
        raise KeyError(key)

    @classmethod
    def from_iter(cls, pairs: Iterable[tuple[str, Any]]) -> SlotFact:
        """experta's hook for rewriting a pattern."""
        return cls(**dict(pairs))

    def copy(self) -> SlotFact:
        """An equal fact that is another object."""
        return type(self)(**self)

    def __eq__(self, other: object) -> bool:
        return self is other or (self.__class__ is other.__class__ and dict.__eq__(self, other))

    def __ne__(self, other: object) -> bool:
        return not self == other

    def __hash__(self) -> int:  # type: ignore[override]
        try:
            return self._hash
        except AttributeError:
            self._hash: int = hash((self.__class__, tuple(map(self.get, self.slot_names))))
            return self._hash

    def __repr__(self) -> str:
        shown = ", ".join(f"{name}={value!r}" for name, value in sorted(self.items()))
        return f"{type(self).__name__}({shown})"

    def __reduce__(self) -> tuple[Any, ...]:
        return (_rebuild, (type(self), dict(self)))

    @property
    def order(self) -> tuple[Any, ...]:
        """A key that orders all facts: class name, then the slots by name; an absent slot comes first."""
        return (type(self).__name__, self.ranked)

    @property
    def ranked(self) -> tuple[Any, ...]:
        """A key that orders the facts of this class."""
        try:
            return self._ranked
        except AttributeError:
            values: tuple[Any, ...] = tuple(map(self.get, self.slot_names))
            if self._partial:
                values = tuple(() if value is None else (value,) for value in values)
            self._ranked: tuple[Any, ...] = values
            return values

    def faults(self) -> Iterator[str]:
        """What keeps this from being declared: unknown, missing or wrongly filled slots."""
        name = type(self).__name__
        for slot in self:
            if slot not in self.__fields__:
                yield f"{name} has no slot {slot!r}; {nearest(slot, self.slot_names)}"
        for slot in self.slot_names:
            field = self.__fields__[slot]
            if slot in self:
                wrong = field.fault(self[slot])
                if wrong:
                    yield f"{name}.{slot} {wrong}"
            elif not field.optional:
                yield f"{name} lacks its slot {slot!r}"

    def validate(self) -> None:
        """Refuse a fact that its class does not allow. Raises KnowledgeError."""
        # Facts are fixed, so one found good stays so; a sweep gives the same ones to many runs.
        if hasattr(self, "_sound"):
            return
        values = tuple(map(self.get, self.slot_names))
        if len(self) == len(values) and tuple(map(type, values)) == self._kinds:
            for name, words in self._worded:
                if self[name] not in words:
                    break
            else:
                # Every declared fact is hashed next, and most are put in order: the values are at hand here.
                self._hash = hash((self.__class__, values))
                self._sound = True
                if not self._partial:
                    self._ranked = values
                return
        for fault in self.faults():
            raise KnowledgeError(fault, hint="mend the fact, or the slots of its class")
        self._sound = True


def validate(facts: Iterable[SlotFact]) -> None:
    """Refuse facts that their classes do not allow. Raises KnowledgeError."""
    for fact in facts:
        # Most were found good before.
        if not hasattr(fact, "_sound"):
            fact.validate()


def _making_exact(names: tuple[str, ...]) -> Callable[..., None]:
    """An __init__ that takes whole numbers for the Fraction slots `names`."""

    def __init__(self: SlotFact, **slots: Any) -> None:
        for name in names:
            if type(slots.get(name)) is int:
                slots[name] = Fraction(slots[name])
        dict.__init__(self, slots)

    return __init__


def _rebuild(cls: type[SlotFact], slots: dict[str, Any]) -> SlotFact:
    return cls(**slots)


def _reader(name: str, optional: bool) -> Callable[[Any], Any]:
    if optional:
        return lambda fact: fact.get(name)
    return itemgetter(name)
