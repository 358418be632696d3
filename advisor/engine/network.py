"""All rules of an engine, compiled once: which facts go where, and how each rule joins them.

A `Node` stands for one pattern without its names: class, literals, tests. Rules with the same pattern
share it. `Network.route` finds the nodes of a fact by its class and one literal slot, so rules on other
classes or other literals cost nothing. Nothing here changes while rules run, except that a plan is made
when it is first needed; so one network serves any number of runs.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from functools import cached_property
from operator import itemgetter
from typing import Any

from advisor.engine.experta_shim import Rule
from advisor.engine.facts import SlotFact
from advisor.engine.joins import Place, Plan, Planner
from advisor.engine.rules import RuleSpec
from advisor.engine.scope import check_names
from advisor.engine.shape import Group, Item, Pattern, Reader
from advisor.engine.sieves import sieved
from advisor.errors import AdvisorError, KnowledgeError

_MET = 4096
"""Facts whose nodes are kept."""


class Node:
    """The facts that pass one pattern's literals and tests. Their list is kept by each run, at `index`.

    ranks        rules that have the pattern as a condition
    group_ranks  rules that have it inside NOT, EXISTS or FORALL
    lowest       the first rule, in the firing order, of both
    """

    __slots__ = (
        "cls", "group_ranks", "index", "literals", "lowest", "plain", "present", "ranks", "sieves", "tests", "where"
    )  # fmt: skip

    def __init__(self, index: int, pattern: Pattern, where: str) -> None:
        self.index = index
        self.where = where
        self.cls = pattern.cls
        self.literals = pattern.literals
        self.present = pattern.present
        self.tests = tuple((test.slot, test.passes) for test in pattern.tests)
        self.sieves = pattern.sieves
        self.plain = False
        self.ranks: list[int] = []
        self.group_ranks: list[int] = []
        self.lowest = 0

    def admits(self, fact: SlotFact) -> bool:
        """Literals first: a test never sees a fact that a literal excludes."""
        for slot, wanted in self.literals:
            if fact.get(slot) != wanted:
                return False
        for slot in self.present:
            if slot not in fact:
                return False
        try:
            for slot, passes in self.tests:
                if not passes(fact[slot]):
                    return False
        except AdvisorError:
            raise
        except Exception as error:
            raise KnowledgeError(
                f"a test of {self.cls.__name__}.{slot} failed with {type(error).__name__}",
                where=self.where,
                hint="a test must answer for every value the slot can hold",
            ) from error
        return all(passes(fact) for passes in self.sieves)


class Route:
    """The nodes of one fact class: found by the value of a literal slot, or always to be looked at.

    tables  for each slot, the nodes by their literal there
    lone    nodes with a single test and nothing else, which are many
    rest    all others
    """

    def __init__(self, nodes: Sequence[Node]) -> None:
        variety: dict[str, set[Any]] = defaultdict(set)
        for node in nodes:
            for slot, value in node.literals:
                variety[slot].add(value)
        tables: dict[str, dict[Any, list[Node]]] = defaultdict(lambda: defaultdict(list))
        rest = []
        for node in nodes:
            if node.literals:
                slot, value = max(node.literals, key=lambda pair: (len(variety[pair[0]]), pair[0]))
                tables[slot][value].append(node)
                node.literals = tuple(pair for pair in node.literals if pair[0] != slot)
            else:
                rest.append(node)
            node.plain = not (node.literals or node.present or node.tests or node.sieves)
        self.tables = [(slot, dict(table)) for slot, table in sorted(tables.items())]
        lone = [node for node in rest if len(node.tests) == 1 and not node.present and not node.sieves]
        self.lone = [(node, *node.tests[0]) for node in lone]
        self.rest = [node for node in rest if node not in lone]


class Branch:
    """One alternative of a rule: its items, the nodes of its patterns, its plans, its names' places."""

    def __init__(self, index: int, rule: CompiledRule, items: tuple[Item, ...], planner: Planner) -> None:
        self.index = index
        self.rule = rule
        self.items = items
        self.nodes = tuple(planner.node(item) for item in items if isinstance(item, Pattern))
        self.pools = _getter(self.nodes)
        self.full = planner.full(items)
        self.places: dict[str, Place] = {
            name: place for name, place in self.full.places.items() if place[0] < len(self.nodes)
        }
        self.asked = tuple((name, *self.places[name]) for name in rule.asked)
        self._planner = planner
        self._seeded: list[Plan | None] = [None] * len(self.nodes)

    def seeded(self, number: int) -> Plan:
        """The plan that starts from facts of pattern `number`."""
        plan = self._seeded[number]
        if plan is None:
            plan = self._seeded[number] = self._planner.seeded(self.items, number)
        return plan


class CompiledRule:
    """A rule with its rank in the firing order.

    only   its branch, if it has but one
    needs  the nodes that must all have facts before it can match; those that few rules share come first
    """

    def __init__(self, rank: int, source: Rule, spec: RuleSpec, asked: tuple[str, ...]) -> None:
        self.rank = rank
        self._source = source
        self.spec = spec
        self.action = spec.action
        self.asked = asked
        self.branches: list[Branch] = []
        self.only: Branch | None = None
        self.needs: tuple[int, ...] = ()

    @cached_property
    def unbound(self) -> Rule:
        """The experta rule for experta's own loop, which gives it the engine as an argument."""
        # Read from an engine, the rule is bound to it and would get the engine twice.
        return self._source.new_conditions(*self._source)


class Network:
    """The rules of one engine. Raises KnowledgeError for any rule that cannot work as written.

    rules    experta rules that carry their RuleSpec as `spec`
    classes  the fact classes that may be used; None for any
    """

    def __init__(self, rules: Sequence[Rule], classes: Sequence[type[SlotFact]] | None = None) -> None:
        self.classes = None if classes is None else frozenset(classes)
        self.nodes: list[Node] = []
        self.branches: list[Branch] = []
        self.rules: list[CompiledRule] = []
        self._known: dict[tuple[Any, ...], Node] = {}
        self._keep: list[Any] = []
        ordered = sorted(rules, key=lambda rule: (rule.spec.layer, rule.spec.id))
        for rank, rule in enumerate(ordered):
            self._compile(rank, rule)
        self._check_class_names()
        self.at_once = [rule.rank for rule in self.rules if any(not branch.nodes for branch in rule.branches)]
        by_class: dict[type[SlotFact], list[Node]] = defaultdict(list)
        for node in self.nodes:
            node.lowest = min(node.ranks + node.group_ranks)
            by_class[node.cls].append(node)
        for compiled in self.rules:
            if compiled.only is not None:
                nodes = {*compiled.only.nodes}
                compiled.needs = tuple(sorted(nodes, key=lambda index: (len(self.nodes[index].ranks), index)))
        self._routes = {cls: Route(nodes) for cls, nodes in by_class.items()}
        # Cases differ in few facts, so most were met before.
        self._met: dict[SlotFact, list[Node]] = {}

    def route(self, fact: SlotFact) -> Sequence[Node]:
        """The nodes whose pattern `fact` passes."""
        known = self._met.get(fact)
        if known is None:
            if len(self._met) >= _MET:
                self._met.clear()
            known = self._met[fact] = self.find(fact)
        return known

    def find(self, fact: SlotFact) -> list[Node]:
        """The same, worked out anew."""
        route = self._routes.get(type(fact))
        if route is None:
            return []
        found = []
        for slot, table in route.tables:
            for node in table.get(fact.get(slot), ()):
                if node.plain or node.admits(fact):
                    found.append(node)
        for node in route.rest:
            if node.plain or node.admits(fact):
                found.append(node)
        try:
            for node, slot, passes in route.lone:
                if passes(fact[slot]):
                    found.append(node)
        except Exception:
            # The same test again, this time with a proper refusal.
            node.admits(fact)
            raise
        return found

    def _compile(self, rank: int, source: Rule) -> None:
        spec: RuleSpec = source.spec
        reader = Reader(spec.id, self.classes)
        shapes = reader.branches(spec.conditions)
        rule = CompiledRule(rank, source, spec, check_names(reader, spec, shapes))
        planner = Planner(lambda pattern: self.node(pattern, spec.id).index, spec.id)
        for shape in shapes:
            branch = Branch(len(self.branches), rule, sieved([item for _, item in shape]), planner)
            self.branches.append(branch)
            rule.branches.append(branch)
            for index in branch.nodes:
                _note(self.nodes[index].ranks, rank)
            for item in branch.items:
                if isinstance(item, Group):
                    for pattern in patterns_in(item):
                        _note(self.node(pattern, spec.id).group_ranks, rank)
        rule.only = rule.branches[0] if len(rule.branches) == 1 else None
        self.rules.append(rule)

    def node(self, pattern: Pattern, where: str) -> Node:
        """The node of a pattern, made at need; `where` names the rule in refusals."""
        key = (
            pattern.cls,
            pattern.literals,
            frozenset(pattern.present),
            tuple((test.slot, test.key) for test in pattern.tests),
            pattern.sieves,
        )
        node = self._known.get(key)
        if node is None:
            node = self._known[key] = Node(len(self.nodes), pattern, where)
            self.nodes.append(node)
            # A test's key may be its address, which stays its own only as long as the test lives.
            self._keep.append(pattern)
        return node

    def _check_class_names(self) -> None:
        known: dict[str, type[SlotFact]] = {}
        for cls in {*(self.classes or ()), *(node.cls for node in self.nodes)}:
            if known.setdefault(cls.__name__, cls) is not cls:
                raise KnowledgeError(
                    f"two fact classes are called {cls.__name__}",
                    hint="facts are ordered by the names of their classes; rename one",
                )


def patterns_in(group: Group) -> Iterator[Pattern]:
    """The patterns inside a group, at any depth."""
    for way in group.ways:
        for item in way:
            if isinstance(item, Pattern):
                yield item
            elif isinstance(item, Group):
                yield from patterns_in(item)


def _getter(nodes: tuple[int, ...]) -> Callable[[Any], tuple[Any, ...]]:
    """Takes the pools of `nodes` out of a run's memory."""
    if len(nodes) > 1:
        return itemgetter(*nodes)
    return lambda memory: tuple(memory[node] for node in nodes)


def _note(ranks: list[int], rank: int) -> None:
    if not ranks or ranks[-1] != rank:
        ranks.append(rank)
