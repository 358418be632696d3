"""The one adapter between the garment and the engine's facts."""

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction
from functools import lru_cache
from itertools import compress
from math import inf
from operator import is_not

from advisor.core.model import Join, Key, Model, Value, place_of, slot_of
from advisor.engine import SlotFact
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.rulebase.reads import RoleSlot, looked_at

# Facts are fixed, so one that was made for one world serves in all others: a sweep asks for the same
# hundred facts hundreds of times, with one of them changed.
MADE = 8192


def facts_of(model: Model, read: frozenset[RoleSlot]) -> Iterator[SlotFact]:
    """The garment as facts: each measure and state that some rule reads, each join whose conditions are met."""
    for values in (model.measures, model.states):
        for key, value in values.items():
            fact = _of_key(model, key, value, read)
            if fact is not None:
                yield fact
    for join in model.joins:
        fact = _of_join(model, join)
        if fact is not None:
            yield fact


class Picture:
    """One garment told as facts, turned from one state to another by what differs between the two.

    Garments that come from each other share the very same objects where nothing changed; so to look for what
    differs, no numbers are compared.
    """

    def __init__(self, read: frozenset[RoleSlot]) -> None:
        self._read = read
        self._model: Model | None = None
        self._of_keys: dict[Key, SlotFact] = {}
        self._of_joins: dict[int, SlotFact] = {}
        self._touching: dict[Key, list[int]] = {}

    @property
    def facts(self) -> list[SlotFact]:
        """All facts, as `facts_of` gives them, in any order."""
        return [*self._of_keys.values(), *self._of_joins.values()]

    def twin(self) -> "Picture":
        """Another that shows the same garment, to be turned on its own."""
        other = Picture(self._read)
        other._model, other._touching = self._model, self._touching
        other._of_keys, other._of_joins = self._of_keys.copy(), self._of_joins.copy()
        return other

    def apart(self, model: Model) -> float:
        """How many values of `model` are not the ones shown; without end for another garment."""
        changed = self._changed(model)
        return inf if changed is None else len(changed)

    def turn(self, model: Model) -> tuple[list[SlotFact], list[SlotFact]]:
        """Show `model` from now on: the facts that go, and those that come. No use after an exception."""
        changed = self._changed(model)
        if changed is None:
            return self._turn_to_another(model)
        gone, come = [], []
        touched: set[int] = set()
        for key, value in changed.items():
            old, new = self._of_keys.pop(key, None), _of_key(model, key, value, self._read)
            if new is not None:
                self._of_keys[key] = new
            if old != new:
                gone += [old] if old is not None else []
                come += [new] if new is not None else []
            touched.update(self._touching.get(key, ()))
        if touched:
            # As sets, because two joins may come to one fact, which goes only with the last of them.
            before = set(self._of_joins.values())
            self._join(model, touched)
            after = set(self._of_joins.values())
            gone += before - after
            come += after - before
        self._model = model
        return gone, come

    def _changed(self, model: Model) -> dict[Key, Value] | None:
        """The values that are other objects now; None if this is another garment."""
        before = self._model
        if before is None or before.places is not model.places or before.joins is not model.joins:
            return None
        measures, states = _others(before.measures, model.measures), _others(before.states, model.states)
        return None if measures is None or states is None else {**dict(measures), **dict(states)}

    def _turn_to_another(self, model: Model) -> tuple[list[SlotFact], list[SlotFact]]:
        before = set(self.facts)
        told = (
            (key, _of_key(model, key, value, self._read))
            for values in (model.measures, model.states)
            for key, value in values.items()
        )
        self._of_keys = {key: fact for key, fact in told if fact is not None}
        self._of_joins, self._touching = {}, {}
        for number, join in enumerate(model.joins):
            for key in {join.a, join.b, *(key for key, _ in join.when)}:
                self._touching.setdefault(key, []).append(number)
        self._join(model, range(len(model.joins)))
        self._model = model
        after = set(self.facts)
        return list(before - after), list(after - before)

    def _join(self, model: Model, numbers: Iterable[int]) -> None:
        """Tell these joins again."""
        for number in numbers:
            fact = _of_join(model, model.joins[number])
            if fact is not None:
                self._of_joins[number] = fact
            else:
                self._of_joins.pop(number, None)


def _others(old: Mapping[Key, Value], new: Mapping[Key, Value]) -> Iterable[tuple[Key, Value]] | None:
    """The values that are other objects now; None if the keys are not the same, in the same order."""
    if list(old) != list(new):
        return None
    return compress(new.items(), map(is_not, new.values(), old.values()))


def _of_key(model: Model, key: Key, value: Value, read: frozenset[RoleSlot]) -> SlotFact | None:
    role = model.places[place_of(key)].role
    if not _wanted(role, key, read):
        return None
    return trait(key, role, value) if isinstance(value, str) else _measure(key, role, value)


def _of_join(model: Model, join: Join) -> SlotFact | None:
    if not all(model.states.get(key) in words for key, words in join.when):
        return None
    roles = model.places[place_of(join.a)].role, model.places[place_of(join.b)].role
    return _joined(join, roles, model.over(join))


@lru_cache(maxsize=MADE)
def _wanted(role: str, key: Key, read: frozenset[RoleSlot]) -> bool:
    return looked_at(role, slot_of(key), read)


@lru_cache(maxsize=MADE)
def _measure(key: Key, role: str, mm: Fraction) -> Measure:
    return Measure(key=key, place=place_of(key), role=role, slot=slot_of(key), mm=mm)


@lru_cache(maxsize=MADE)
def trait(key: Key, role: str, word: str) -> Trait:
    """A state as a fact."""
    return Trait(key=key, place=place_of(key), role=role, slot=slot_of(key), word=word)


@lru_cache(maxsize=MADE)
def _joined(join: Join, roles: tuple[str, str], over: Fraction) -> Joined:
    return Joined(
        id=join.id,
        kind=join.kind,
        relation=join.relation,
        place=place_of(join.a),
        role=roles[0],
        slot=slot_of(join.a),
        other=place_of(join.b),
        other_role=roles[1],
        over_mm=over,
        slack_mm=join.slack,
    )
