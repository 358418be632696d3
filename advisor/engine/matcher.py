"""Our matcher and firing order, put in through experta's own hooks `__matcher__` and `__strategy__`.

The matcher is lazy. A fact is only filed under its nodes, with its place in the order of all filings; a rule
is joined when no rule before it in the firing order has anything to fire, and then all facts that came since
are joined at once: those filed after the mark set when the rule was joined last.
"""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType
from typing import Any

from advisor.engine.experta_shim import Activation, Agenda, Matcher, Rule, Strategy
from advisor.engine.facts import SlotFact
from advisor.engine.joins import Facts, value_at
from advisor.engine.network import Branch, CompiledRule, Network, Node
from advisor.engine.result import Firing

Pool = dict[SlotFact, int]
"""The facts of a node, each with its place in the order of all filings; the last filed is last."""


class Match(Activation):
    """A rule's conditions met by certain facts.

    live   False once they no longer are
    made   what firing it concluded; None if it has not fired
    round  the run it fired in
    """

    __slots__ = ("branch", "facts", "live", "made", "round")

    def __init__(self, branch: Branch, facts: Facts) -> None:
        # experta's own would copy the facts into a set; their order matters here.
        self.branch = branch
        self.facts: Facts = facts
        self.live = True
        self.made: tuple[SlotFact, ...] | None = None
        self.round = 0

    __eq__ = object.__eq__
    __hash__ = object.__hash__

    @property
    def rule(self) -> Rule:  # type: ignore[override]
        """experta's rule, for experta's own loop."""
        return self.branch.rule.unbound

    @property
    def context(self) -> dict[str, Any]:  # type: ignore[override]
        """All names bound, with their values."""
        return {name: value_at(self.facts, place) for name, place in self.branch.places.items()}

    @property
    def rule_id(self) -> str:
        """The id of the rule."""
        return self.branch.rule.spec.id

    def firing(self) -> Firing:
        """What firing it was, told with names and conclusions."""
        made = tuple(dict.fromkeys(self.made or ()))
        return Firing(self.branch.rule.spec.id, self.facts, MappingProxyType(self.context), made)

    @property
    def key(self) -> tuple[Any, ...]:
        """Orders all matches: rank of the rule, alternative, facts."""
        return (self.branch.rule.rank, *_within_rule(self))


class JoinMatcher(Matcher):
    """Joins each rule on its own, with the right meaning of NOT, EXISTS and FORALL.

    current  the rank of the rule that is firing
    urgent   whether anything has been filed since that a rule up to `current` looks at
    kept     whether more changes are to be expected: rules that found nothing are then marked too, so that
             they are not joined from the start again
    """

    def __init__(self, engine: Any) -> None:
        super().__init__(engine)
        network = getattr(type(engine), "network", None)
        self.network: Network = network if network is not None else Network(engine.get_rules())
        self.reset()

    def reset(self) -> None:
        """Forget all facts."""
        network = self.network
        # Shared by all nodes until each has a fact; hence never written to.
        self._memory: list[Pool] = [{}] * len(network.nodes)
        self._filed = 0
        self._seen: list[int | None] = [None] * len(network.branches)
        self._matches: dict[int, list[Match]] = {}
        # Ranks negated and in order, so that the next rule is at the end.
        self._queue = sorted(-rank for rank in network.at_once)
        self._queued = set(network.at_once)
        self._grown: set[Node] = set()
        self._touched: set[Node] = set()
        self._rejoin: set[int] = set()
        self._dead: list[Match] = []
        self.current = -1
        self.urgent = True
        self.kept = False

    def settle_as(self, other: JoinMatcher) -> dict[Match, Match]:
        """Take over all that another matcher at rest has filed and found; answers the twin of each match."""
        twins = {}
        self._memory = [pool.copy() if pool else pool for pool in other._memory]
        self._filed = other._filed
        self._seen = other._seen.copy()
        for rank, matches in other._matches.items():
            mine = self._matches[rank] = []
            for match in matches:
                twin = twins[match] = Match(match.branch, match.facts)
                twin.made, twin.round = match.made, match.round
                mine.append(twin)
        self._queue, self._queued = [], set()
        self.kept = True
        return twins

    def changes(
        self, adding: Iterable[SlotFact] | None = None, deleting: Iterable[SlotFact] | None = None
    ) -> tuple[list[Match], list[Match]]:
        """experta's hook: file the changes, answer the new matches and those that no longer hold.

        New matches are only those of the first rule, in the firing order, that has any; the matches of
        later rules are answered in later calls, when the agenda has come to them.
        """
        gone = list(deleting or ())
        for fact in adding or ():
            if fact in gone:
                gone.remove(fact)
            else:
                self.insert(fact)
        for fact in gone:
            self.remove(fact)
        return self.advance()

    def advance(self) -> tuple[list[Match], list[Match]]:
        """What `changes` answers, when the changes are already filed."""
        if self._grown or self._touched:
            self._call_rules()
        added: list[Match] = []
        removed, self._dead = self._dead, []
        queue, queued, rejoin, rules = self._queue, self._queued, self._rejoin, self.network.rules
        memory, seen = self._memory, self._seen
        last = self._first_pending() if queue else -1
        while queue and -queue[-1] <= last:
            rank = -queue.pop()
            queued.discard(rank)
            rule = rules[rank]
            if rank in rejoin:
                self._join_again(rule, added, removed)
                # What was to fire next may have ended just now, and a later rule's turn have come.
                last = self._first_pending()
            elif (branch := rule.only) and seen[branch.index] is None and branch.full.short:
                # Most rules end here, having found nothing; hence no call more than needed.
                found = branch.full.short(memory)
                if found or self.kept:
                    seen[branch.index] = self._filed
                    self._keep(branch, found, added)
            else:
                for branch in rule.branches:
                    self._join(branch, added)
            if added:
                last = rank
                break
        self.current, self.urgent = last, False
        return added, removed

    def insert(self, fact: SlotFact) -> None:
        """File a new fact."""
        nodes = self.network.route(fact)
        if not nodes:
            return
        memory = self._memory
        self._filed = filed = self._filed + 1
        for node in nodes:
            pool = memory[node.index]
            if pool:
                pool[fact] = filed
            else:
                memory[node.index] = {fact: filed}
            if node.lowest <= self.current:
                self.urgent = True
            if node.ranks:
                self._grown.add(node)
            if node.group_ranks:
                self._touched.add(node)

    def remove(self, fact: SlotFact) -> None:
        """Take a fact out, and end the matches it is part of."""
        self.urgent = True
        for node in self.network.route(fact):
            pool = self._memory[node.index]
            if fact not in pool:
                continue
            del pool[fact]
            for rank in node.ranks:
                self._end(rank, fact)
            if node.group_ranks:
                self._touched.add(node)

    def _end(self, rank: int, fact: SlotFact) -> None:
        matches = self._matches.get(rank)
        if not matches:
            return
        kept = []
        for match in matches:
            if fact in match.facts:
                match.live = False
                self._dead.append(match)
            else:
                kept.append(match)
        self._matches[rank] = kept

    def _call_rules(self) -> None:
        """Queue the rules whose nodes have changed, if each of their patterns has a fact.

        A rule without has no match, and can get none before another of its nodes grows.
        """
        memory, rules = self._memory, self.network.rules
        called = set()
        for node in self._grown:
            for rank in node.ranks:
                for index in rules[rank].needs:
                    if not memory[index]:
                        break
                else:
                    called.add(rank)
        for node in self._touched:
            for rank in node.group_ranks:
                if all(memory[index] for index in rules[rank].needs):
                    self._rejoin.add(rank)
                    called.add(rank)
        self._grown.clear()
        self._touched.clear()
        called -= self._queued
        self._queued |= called
        # Python's sort merges two ordered stretches in one pass.
        self._queue += sorted(-rank for rank in called)
        self._queue.sort()

    def _first_pending(self) -> int:
        """The rank of the next match on the agenda."""
        for match in reversed(self.engine.agenda.activations):
            if match.live:
                rank: int = match.branch.rule.rank
                return rank
        return len(self.network.rules)

    def _join(self, branch: Branch, added: list[Match]) -> None:
        """The matches that contain a fact filed since this branch was last joined."""
        pools = branch.pools(self._memory)
        if not all(pools):
            # It can find nothing yet, and needs no new mark: whatever it finds later is new.
            return
        seen = self._seen[branch.index]
        self._seen[branch.index] = self._filed
        found = branch.full.all(self._memory) if seen is None else self._news(branch, pools, seen)
        if found:
            self._keep(branch, found, added)

    def _keep(self, branch: Branch, found: list[Facts], added: list[Match]) -> None:
        fresh = [Match(branch, facts) for facts in found]
        added += fresh
        self._matches.setdefault(branch.rule.rank, []).extend(fresh)

    def _join_again(self, rule: CompiledRule, added: list[Match], removed: list[Match]) -> None:
        """What a NOT, EXISTS or FORALL looks at has changed: any match may have come or gone."""
        self._rejoin.discard(rule.rank)
        matches = self._matches.setdefault(rule.rank, [])
        old = {(match.branch.index, *map(id, match.facts)): match for match in matches}
        matches.clear()
        for branch in rule.branches:
            self._seen[branch.index] = self._filed
            for facts in branch.full.all(self._memory):
                match = old.pop((branch.index, *map(id, facts)), None)
                if match is None:
                    match = Match(branch, facts)
                    added.append(match)
                matches.append(match)
        for match in old.values():
            match.live = False
            removed.append(match)

    def _news(self, branch: Branch, pools: tuple[Pool, ...], seen: int) -> list[Facts]:
        """The tuples with a fact that was filed after `seen`."""
        found: list[Facts] = []
        before: list[tuple[int, list[SlotFact]]] = []
        for number, pool in enumerate(pools):
            new = _filed_after(pool, seen)
            if new:
                tuples = branch.seeded(number).solve(self._memory, [(fact,) for fact in new])
                # A tuple with several new facts is found once from each; it counts the first time.
                for earlier, ones in before:
                    tuples = [facts for facts in tuples if not any(facts[earlier] is one for one in ones)]
                found += tuples
                before.append((number, new))
        return found


def _filed_after(pool: Pool, mark: int) -> list[SlotFact]:
    new = []
    for fact, filed in reversed(pool.items()):
        if filed <= mark:
            break
        new.append(fact)
    return new


class RankOrder(Strategy):
    """Fires by layer, rule id, then the facts' own order; never by address or by age."""

    def update_agenda(self, agenda: Agenda, added: list[Match], removed: list[Match]) -> None:
        """experta's hook: drop what no longer holds, put the new where it belongs (next is last)."""
        if removed:
            agenda.activations = [match for match in agenda.activations if match.live]
        if added:
            waiting = agenda.activations
            merge = bool(waiting) and waiting[-1].branch.rule.rank <= added[0].branch.rule.rank
            if len(added) > 1 and not merge:
                added.sort(key=_within_rule, reverse=True)
            waiting.extend(added)
            if merge:
                waiting.sort(key=_key, reverse=True)

    def _update_agenda(self, agenda: Agenda, added: list[Match], removed: list[Match]) -> None:
        self.update_agenda(agenda, added, removed)


def _key(match: Any) -> Any:
    return match.key


def _within_rule(match: Any) -> tuple[Any, ...]:
    """Orders the matches of one rule. Within an alternative, facts in one place are of one class."""
    return (match.branch.index, [fact.ranked for fact in match.facts])
