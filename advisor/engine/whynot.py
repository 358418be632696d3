"""Why a rule did not fire: the first of its conditions that no facts meet, and how near they come."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any, Literal

from advisor.engine.experta_shim import ORFC, L
from advisor.engine.facts import SlotFact
from advisor.engine.joins import Draft, Facts, Place, Planner, Stage, solve, value_at
from advisor.engine.lean import experta_rule
from advisor.engine.network import Network
from advisor.engine.result import Run
from advisor.engine.rules import RuleSpec
from advisor.engine.shape import FieldTest, Group, Item, Pattern, Reader

Kind = Literal["pattern", "test", "not", "exists", "forall"]


@dataclass(frozen=True)
class SlotMiss:
    """One slot that keeps a fact from matching.

    wanted  the values that would do, if they can be listed: a literal, or what earlier conditions bound
    seen    the fact's value; None for a slot left out
    reason  literal  the pattern names another value
            test     a predicate says no; `test` is the constraint as written, `wanted` is empty unless it
                     is a choice of literals
            bound    earlier conditions bound other values to the name
            differs  the value is what the name is bound to, and must not be
            absent   the slot is optional and left out
    """

    slot: str
    wanted: tuple[object, ...]
    seen: object
    reason: Literal["literal", "test", "bound", "differs", "absent"]
    test: Any = None


@dataclass(frozen=True)
class NearMiss:
    """A fact of the right class and the slots that fail. Predicates and bindings are looked at only
    once all literals agree."""

    fact: SlotFact
    slots: tuple[SlotMiss, ...]


@dataclass(frozen=True)
class WhyNot:
    """What keeps `rule` from firing.

    index      of the first condition without a solution, in `rule.conditions`; None if all have one
    condition  that condition as written
    kind       what it is; for a condition of several parts, the part that fails
    bindings   each way the conditions before it bind names (all conditions, if `index` is None)
    misses     for a pattern, or one inside EXISTS: the facts of its class, fewest failing slots first
    blockers   for NOT: the facts that should not be there; for FORALL: those that lack what they need
    """

    rule: str
    index: int | None
    condition: Any = None
    kind: Kind | None = None
    bindings: tuple[Mapping[str, object], ...] = ()
    misses: tuple[NearMiss, ...] = ()
    blockers: tuple[SlotFact, ...] = ()

    @property
    def holds(self) -> bool:
        """True if every condition has a solution: the rule does fire."""
        return self.index is None


def why_not(rule: RuleSpec, run_or_facts: Run | Iterable[SlotFact]) -> WhyNot:
    """Evaluate the conditions of `rule` one at a time, each with all bindings of those before it.

    Looks at the facts as they stand at the end of a run. Of the alternatives of an OR, those that come
    farthest count. Raises KnowledgeError for a rule that cannot work as written.
    """
    facts = run_or_facts.facts if isinstance(run_or_facts, Run) else tuple(run_or_facts)
    asker = _Asker(rule, facts)
    answers = [asker.branch(number) for number in range(len(asker.shapes))]
    for answer in answers:
        if answer.index is None:
            return answer
    farthest = max(answer.index for answer in answers if answer.index is not None)
    return _merged([answer for answer in answers if answer.index == farthest])


class _Asker:
    """One rule, compiled on its own, and facts filed under its nodes."""

    def __init__(self, rule: RuleSpec, facts: Sequence[SlotFact]) -> None:
        self.rule = rule
        self.facts = tuple(sorted(set(facts), key=lambda fact: fact.order))
        self.shapes = Reader(rule.id).branches(rule.conditions)
        network = Network([experta_rule(rule)])
        self.planner = Planner(lambda pattern: network.node(pattern, rule.id).index, rule.id)
        self.memory: list[list[SlotFact]] = [[] for _ in network.nodes]
        for fact in self.facts:
            for node in network.route(fact):
                self.memory[node.index].append(fact)

    def branch(self, number: int) -> WhyNot:
        """How far one alternative comes."""
        shape = self.shapes[number]
        walk = _Walk(self, {}, 0, [()])
        for index, item in shape:
            before, places = walk.found, dict(walk.draft.places)
            if walk.step(item):
                continue
            named = tuple(_bindings(facts, places) for facts in before)
            found = WhyNot(self.rule.id, index, self.rule.conditions[index], bindings=_distinct(named))
            return self.explain(found, item, before, places)
        last = tuple(_bindings(facts, walk.draft.places) for facts in walk.found)
        return WhyNot(self.rule.id, None, bindings=_distinct(last))

    def explain(self, found: WhyNot, item: Item, before: list[Facts], places: dict[str, Place]) -> WhyNot:
        """`found` with the reasons why `item` has no solution after `before`."""
        if isinstance(item, Pattern):
            return replace(found, kind="pattern", misses=self.misses(item, before, places))
        if not isinstance(item, Group):
            return replace(found, kind="test")
        width = len(before[0])
        if item.kind == "EXISTS":
            return replace(found, kind="exists", misses=self._inside(item, before, places, width))
        blockers: set[SlotFact] = set()
        for way in item.ways:
            walk = _Walk(self, places, width, before)
            if all(walk.step(part) for part in way):
                blockers.update(fact for facts in walk.found for fact in facts[width:])
        ordered = tuple(sorted(blockers, key=lambda fact: fact.order))
        return replace(found, kind="not" if item.kind == "NOT" else "forall", blockers=ordered)

    def _inside(self, group: Group, before: list[Facts], places: dict[str, Place], width: int) -> tuple[NearMiss, ...]:
        misses: list[NearMiss] = []
        for way in group.ways:
            walk = _Walk(self, places, width, before)
            for part in way:
                so_far, names = walk.found, dict(walk.draft.places)
                if not walk.step(part):
                    if isinstance(part, Pattern):
                        misses += self.misses(part, so_far, names)
                    break
        return _nearest_first(misses)

    def misses(self, pattern: Pattern, before: list[Facts], places: dict[str, Place]) -> tuple[NearMiss, ...]:
        """For each fact of the pattern's class, the slots that fail."""
        found = []
        for fact in self.facts:
            if type(fact) is pattern.cls:
                slots = _own_misses(pattern, fact) or _join_misses(pattern, fact, before, places)
                found.append(NearMiss(fact, slots))
        return _nearest_first(found)


class _Walk:
    """Tuples of facts, grown by one condition after another."""

    def __init__(self, asker: _Asker, places: dict[str, Place], width: int, found: list[Facts]) -> None:
        self._memory = asker.memory
        self.draft = Draft(asker.planner, dict(places), width)
        self.found = found

    def step(self, item: Item) -> bool:
        """Apply one condition. False if nothing is left."""
        self.draft.stages = [Stage(None)]
        self.draft.add([item])
        self.found = solve(self.draft.stages, self._memory, self.found)
        return bool(self.found)


def _own_misses(pattern: Pattern, fact: SlotFact) -> tuple[SlotMiss, ...]:
    """The slots that fail whatever else there is."""
    literal = tuple(
        SlotMiss(slot, (wanted,), fact.get(slot), "literal")
        for slot, wanted in pattern.literals
        if fact.get(slot) != wanted
    )
    absent = tuple(SlotMiss(slot, (), None, "absent") for slot in pattern.present if slot not in fact)
    if literal or absent:
        return literal + tuple(miss for miss in absent if miss.slot not in {each.slot for each in literal})
    return tuple(
        SlotMiss(test.slot, _choices(test), fact[test.slot], "test", test.source)
        for test in pattern.tests
        if not test.passes(fact[test.slot])
    )


def _choices(test: FieldTest) -> tuple[object, ...]:
    if isinstance(test.source, ORFC) and all(isinstance(part, L) for part in test.source):
        return tuple(part.value for part in test.source)
    return ()


def _join_misses(
    pattern: Pattern, fact: SlotFact, before: list[Facts], places: dict[str, Place]
) -> tuple[SlotMiss, ...]:
    """The slots that do not agree with what is bound, for the tuple that leaves the fewest."""
    own: dict[str, Any] = {}
    best: tuple[SlotMiss, ...] | None = None
    for slot, name in pattern.names:
        own.setdefault(name, fact[slot])
    for facts in before:
        bound = {**own, **{name: value_at(facts, place) for name, place in places.items()}}
        missed = [
            SlotMiss(slot, (bound[name],), fact[slot], "bound")
            for slot, name in pattern.names
            if fact[slot] != bound[name]
        ]
        missed += [
            SlotMiss(slot, (), fact[slot], "differs") for slot, name in pattern.differs if fact[slot] == bound[name]
        ]
        if best is None or len(missed) < len(best):
            best = tuple(missed)
    names = dict(pattern.names)
    return tuple(
        replace(miss, wanted=_values(before, places[names[miss.slot]]))
        if miss.reason == "bound" and names[miss.slot] in places
        else miss
        for miss in best or ()
    )


def _values(before: list[Facts], place: Place) -> tuple[Any, ...]:
    return tuple(sorted({value_at(facts, place) for facts in before}))


def _bindings(facts: Facts, places: Mapping[str, Place]) -> Mapping[str, object]:
    return MappingProxyType({name: value_at(facts, place) for name, place in places.items() if place[0] < len(facts)})


def _distinct(bindings: Iterable[Mapping[str, object]]) -> tuple[Mapping[str, object], ...]:
    return tuple({tuple(sorted(each.items(), key=lambda pair: pair[0])): each for each in bindings}.values())


def _nearest_first(misses: Iterable[NearMiss]) -> tuple[NearMiss, ...]:
    by_fact: dict[SlotFact, NearMiss] = {}
    for miss in misses:
        known = by_fact.setdefault(miss.fact, miss)
        if len(miss.slots) < len(known.slots):
            by_fact[miss.fact] = miss
    return tuple(sorted(by_fact.values(), key=lambda miss: (len(miss.slots), miss.fact.order)))


def _merged(answers: list[WhyNot]) -> WhyNot:
    first = answers[0]
    blockers = {fact for answer in answers for fact in answer.blockers}
    return replace(
        first,
        bindings=_distinct(each for answer in answers for each in answer.bindings),
        misses=_nearest_first(miss for answer in answers for miss in answer.misses),
        blockers=tuple(sorted(blockers, key=lambda fact: fact.order)),
    )
