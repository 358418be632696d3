"""How the facts of one rule are put together: plans of stages, and the matches they end in.

A match is a tuple of facts, one for each pattern of the rule. A name is a place in that tuple: position
and slot. So a join compares two slots, and no table of names is built until a rule fires.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from functools import lru_cache
from operator import itemgetter
from typing import Any

from advisor.engine.facts import SlotFact
from advisor.engine.shape import Group, Item, Pattern, Test
from advisor.errors import AdvisorError, KnowledgeError

Facts = tuple[SlotFact, ...]
Pool = Collection[SlotFact]
Memory = Sequence[Pool]
"""The facts of each node, by the node's index."""
Place = tuple[int, str | None]
"""Position in the tuple of facts, and slot; None stands for the whole fact."""
Check = Callable[[Memory, Facts], Any]


def value_at(facts: Facts, place: Place) -> Any:
    """What a name is bound to."""
    position, slot = place
    return facts[position] if slot is None else facts[position][slot]


_ASKED = 256
"""Answers of one TEST that are kept."""
_FEW = 40
"""Up to about so many pairs, comparing them all is quicker than a table."""


class Stage:
    """Adds the facts of one node to each tuple (no node: adds none), then keeps those that pass."""

    __slots__ = ("checks", "first", "joins", "node")

    def __init__(self, node: int | None, position: int = 0) -> None:
        self.node = node
        self.first = position == 0
        self.joins: list[tuple[int, str, str]] = []
        self.checks: list[Check] = []

    def extend(self, pool: Pool, found: list[Facts]) -> list[Facts]:
        """Each tuple with each fact of `pool` that agrees with it."""
        if self.first:
            return list(zip(pool, strict=False))
        if not self.joins:
            return [(*facts, fact) for facts in found for fact in pool]
        at, slot, mine = self.joins[0]
        if len(found) * len(pool) <= _FEW:
            grown = [
                (*facts, fact)
                for facts in found
                for wanted in (facts[at][slot],)
                for fact in pool
                if fact[mine] == wanted
            ]
        else:
            table: dict[Any, list[SlotFact]] = {}
            for fact in pool:
                table.setdefault(fact[mine], []).append(fact)
            grown = [(*facts, fact) for facts in found for fact in table.get(facts[at][slot], ())]
        for at, slot, mine in self.joins[1:]:
            grown = [facts for facts in grown if facts[at][slot] == facts[-1][mine]]
        return grown


def solve(stages: Iterable[Stage], memory: Memory, found: list[Facts]) -> list[Facts]:
    """All tuples that the stages make of those in `found`."""
    for stage in stages:
        if stage.node is not None:
            found = stage.extend(memory[stage.node], found)
        for check in stage.checks:
            found = [facts for facts in found if check(memory, facts)]
        if not found:
            break
    return found


class Plan:
    """The stages of one branch, starting from nothing or from facts of one of its patterns."""

    def __init__(
        self, stages: tuple[Stage, ...], places: dict[str, Place], turn: Callable[[Facts], Facts] | None
    ) -> None:
        self.stages = tuple(stage for stage in stages if stage.node is not None or stage.checks)
        self.places = places
        self._turn = turn
        self.short = _short(self.stages)

    def all(self, memory: Memory) -> list[Facts]:
        """All tuples there are, for a plan that starts from nothing."""
        return solve(self.stages, memory, [()]) if self.short is None else self.short(memory)

    def solve(self, memory: Memory, start: list[Facts]) -> list[Facts]:
        """All tuples from those in `start`, their facts in the order of the patterns."""
        found = solve(self.stages, memory, start)
        return found if self._turn is None else [self._turn(facts) for facts in found]


def _short(stages: Sequence[Stage]) -> Callable[[Memory], list[Facts]] | None:
    """The commonest plans in one go: two patterns joined once, and whatever comes after.

    Most rules of a rule base begin like this and most of them find nothing, so what counts is to find
    nothing quickly.
    """
    if len(stages) < 2 or stages[0].checks or len(stages[1].joins) != 1:
        return None
    first, second, rest = stages[0].node, stages[1].node, stages[2:]
    if first is None or second is None:
        return None
    ((_, slot, mine),) = stages[1].joins
    checks = stages[1].checks

    def short(memory: Memory) -> list[Facts]:
        ones, twos = memory[first], memory[second]
        if not ones or not twos:
            return []
        if len(ones) * len(twos) > _FEW:
            found = stages[1].extend(twos, list(zip(ones, strict=False)))
        else:
            found = [(one, two) for one in ones for wanted in (one[slot],) for two in twos if two[mine] == wanted]
        if found:
            for check in checks:
                found = [facts for facts in found if check(memory, facts)]
            if rest:
                found = solve(rest, memory, found)
        return found

    return short


class Planner:
    """Lays out stages. `nodes` answers the index of a pattern's node, `where` names the rule."""

    def __init__(self, nodes: Callable[[Pattern], int], where: str) -> None:
        self._nodes = nodes
        self._where = where
        # By the identity of the tests, which the rule keeps.
        self._askers: dict[int, Callable[..., Any]] = {}

    def full(self, items: Sequence[Item]) -> Plan:
        """A plan that starts from nothing."""
        draft = Draft(self, {}, 0)
        draft.add(items)
        return Plan(tuple(draft.stages), draft.places, None)

    def seeded(self, items: Sequence[Item], seed: int) -> Plan:
        """A plan that starts from facts of the pattern that is number `seed` among the patterns.

        The rest keeps its order, so that no test runs before all patterns that stand above it.
        """
        patterns = [item for item in items if isinstance(item, Pattern)]
        draft = Draft(self, {}, 0)
        draft.seed(patterns[seed])
        draft.add(item for item in items if item is not patterns[seed])
        order = [seed, *(n for n in range(len(patterns)) if n != seed)]
        turn = itemgetter(*(order.index(n) for n in range(len(patterns)))) if seed else None
        return Plan(tuple(draft.stages), draft.places, turn)

    def test(self, test: Test, places: dict[str, Place]) -> Check:
        """A TEST as a check of a tuple."""
        ask = self._asker(test)
        wanted = [places[name] for name in test.names]

        def check(_: Memory, facts: Facts) -> Any:
            return ask(*[facts[p] if s is None else facts[p][s] for p, s in wanted])

        return check

    def _asker(self, test: Test) -> Callable[..., Any]:
        """The function of a TEST, given its values in the order of its names.

        One that calls others is asked but once for the same values: it may take longer than all the rest of a
        run, and runs that are changed a little ask the same again and again.
        """
        ask = self._askers.get(id(test))
        if ask is None:
            ask = _asking(test, self._where)
            if getattr(getattr(test.function, "__code__", None), "co_names", True):
                ask = lru_cache(maxsize=_ASKED)(ask)
            self._askers[id(test)] = ask
        return ask

    def group(self, group: Group, places: dict[str, Place], width: int) -> Check:
        """A NOT, EXISTS or FORALL as a check of a tuple."""
        ways = []
        for way in group.ways:
            draft = Draft(self, dict(places), width)
            draft.add(way)
            ways.append(tuple(draft.stages))
        negated = group.negated
        if len(ways) == 1 and len(ways[0]) == 2 and not ways[0][0].checks and not ways[0][1].checks:
            return _single(ways[0][1], negated)

        def check(memory: Memory, facts: Facts) -> bool:
            return any(solve(stages, memory, [facts]) for stages in ways) is not negated

        return check

    def node(self, pattern: Pattern) -> int:
        """The index of a pattern's node."""
        return self._nodes(pattern)


def _asking(test: Test, where: str) -> Callable[..., Any]:
    function, names = test.function, test.names

    def ask(*values: Any) -> Any:
        try:
            return function(**dict(zip(names, values, strict=True)))
        except AdvisorError:
            raise
        except Exception as error:
            raise KnowledgeError(
                f"a TEST of {', '.join(names)} failed with {type(error).__name__}",
                where=where,
                hint="a TEST must answer for every value its names can have",
            ) from error

    return ask


def _single(stage: Stage, negated: bool) -> Check:
    """The commonest group, one pattern without more: no tuples need be made for it."""
    node, joins = stage.node, tuple(stage.joins)
    assert node is not None

    def check(memory: Memory, facts: Facts) -> bool:
        pool = memory[node]
        if joins and pool:
            wanted = [(facts[position][slot], mine) for position, slot, mine in joins]
            for fact in pool:
                for value, mine in wanted:
                    if fact[mine] != value:
                        break
                else:
                    return not negated
            return negated
        return bool(pool) is not negated

    return check


class Draft:
    """Stages under construction, and where each name is to be found in the tuple so far."""

    def __init__(self, planner: Planner, places: dict[str, Place], width: int) -> None:
        self.planner = planner
        self.places = places
        self.width = width
        self.stages = [Stage(None)]
        self._differing: list[tuple[Place, str]] = []

    def seed(self, pattern: Pattern) -> None:
        self._pattern(pattern, Stage(None))

    def add(self, items: Iterable[Item]) -> None:
        for item in items:
            if isinstance(item, Pattern):
                self._pattern(item, Stage(self.planner.node(item), self.width))
            elif isinstance(item, Test):
                self.stages[-1].checks.append(self.planner.test(item, self.places))
            else:
                self.stages[-1].checks.append(self.planner.group(item, self.places, self.width))

    def _pattern(self, pattern: Pattern, stage: Stage) -> None:
        mine, self.width = self.width, self.width + 1
        self.stages.append(stage)
        if pattern.bind is not None:
            self.places[pattern.bind] = (mine, None)
        for slot, name in pattern.names:
            position, other = self.places.setdefault(name, (mine, slot))
            if position == mine and other != slot:
                stage.checks.append(_compare((mine, slot), (position, other), equal=True))
            elif position != mine and other is not None:
                stage.joins.append((position, other, slot))
        self._differing += [((mine, slot), name) for slot, name in pattern.differs]
        for here, name in self._differing:
            if name in self.places:
                stage.checks.append(_compare(here, self.places[name], equal=False))
        self._differing = [(here, name) for here, name in self._differing if name not in self.places]


def _compare(one: Place, other: Place, *, equal: bool) -> Check:
    return lambda _, facts: (value_at(facts, one) == value_at(facts, other)) is equal
