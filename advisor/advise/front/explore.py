"""The option graph of a case, found by running the advice: each run tells what one set of choices leads to.

First every way of every finding is tried alone beside the ways that stand otherwise; then two together where both
write what one join holds. What a finding hangs on is learned from runs that differ: where its ways are others though
all it was known to hang on is the same, the first choice that differs is one more thing it hangs on. So the graph is
what the runs so far support, no more; every combination that is offered is run and learned from as well.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import combinations

from advisor.advise.advise import advise
from advisor.advise.front.graph import Cells, Graph, Way, Ways
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, FixId, Limits
from advisor.core.model import Key
from advisor.core.stages import stage_index
from advisor.core.work import Option
from advisor.errors import KnowledgeError
from advisor.rulebase.base import RuleBase

PAIRS = 400
"""Most runs of two choices together, so that no garment takes long; what they would show, an offer shows too."""

TRIES = 100


class Grown(Exception):
    """The graph is another than when the search began."""


@dataclass(frozen=True)
class Seen:
    """One run: the fix taken for each finding that has any, and the ways each finding there has."""

    chosen: Mapping[FindingId, FixId]
    ways: Mapping[FindingId, Ways]
    advice: Advice


def candidates(advice: Advice, finding: FindingId, held: FixId | None, every: bool = False) -> list[Option]:
    """The options worth comparing: the one she holds to, else the best kind there is; `every`: of all kinds.

    What closes a finding whole comes before what leaves some of it, and that before leaving it as it is: nothing is
    left undone to save time.
    """
    options = advice.options_for(finding)
    kept = [option for option in options if option.fix == held]
    if kept:
        return kept
    stand = [option for option in options if option.open]
    if every:
        return stand
    whole = [option for option in stand if option.closes and not option.work.leaves]
    return whole or [option for option in stand if option.closes] or stand


class Explored(Graph):
    """The graph as known so far. `runs`: how often the advice was worked out for it; `every`: as of `candidates`."""

    def __init__(
        self, base: RuleBase, world: World, held: Mapping[FindingId, FixId], limits: Limits, *, every: bool = False
    ) -> None:
        super().__init__((), {}, {})
        self.every = every
        self.base, self.world, self.held = base, world, dict(held)
        # The graph is the same whatever she will not go past; only what weighs how much orders equals.
        weights = (limits.weigh_difficulty, limits.weigh_durability, limits.weigh_visibility)
        self.limits = Limits(5, 1, *weights, buttonholes=limits.buttonholes)
        self.runs = 0
        self.stages: dict[FindingId, int] = {}
        self.met: list[Seen] = []
        self._runs: dict[frozenset[tuple[FindingId, FixId]], Seen] = {}
        self._explore()

    # The graph

    def ways(self, finding: FindingId, chosen: Mapping[FindingId, FixId]) -> Ways | None:
        """As of any graph; looks if it is not known, and raises Grown if that showed anything."""
        if self.circumstances(finding, chosen) not in self.cells[finding]:
            stage = self.stages[finding]
            self.run({f: fix for f, fix in chosen.items() if self.stages[f] < stage})
            raise Grown
        return super().ways(finding, chosen)

    def whole(self, finding: FindingId) -> bool:
        return not self.influences[finding]

    # Running

    def run(self, chosen: Mapping[FindingId, FixId]) -> Seen:
        """As `look`, without whether it changed anything."""
        return self.look(chosen)[0]

    def look(self, chosen: Mapping[FindingId, FixId]) -> tuple[Seen, bool]:
        """What these choices lead to, the first of the best kind standing in where there is none; and learn from it.

        Also whether the graph is another now.
        """
        wanted = dict(chosen)
        for _ in range(TRIES):
            seen = self._run(wanted)
            gone = [f for f in wanted if f in seen.ways and wanted[f] not in {way.fix for way in seen.ways[f]}]
            unsettled = [f for f in seen.ways if f not in seen.chosen and seen.ways[f]]
            if not gone and not unsettled:
                break
            # Only the first: what comes after it may be another once it is put right.
            first = next(f for f in seen.ways if f in gone or f in unsettled)
            wanted[first] = seen.ways[first][0].fix
        return seen, self.learn(seen)

    def _run(self, wanted: Mapping[FindingId, FixId]) -> Seen:
        token = frozenset(wanted.items())
        if token not in self._runs:
            self.runs += 1
            choices = {finding: Choice(fix) for finding, fix in {**self.held, **wanted}.items()}
            self._runs[token] = self._seen(advise(self.base, self.world, choices, self.limits, fill=True, told=False))
        return self._runs[token]

    def _seen(self, advice: Advice) -> Seen:
        ways, chosen = {}, {}
        for finding in advice.findings:
            self.stages.setdefault(finding.id, stage_index(finding.stage))
            options = candidates(advice, finding.id, self.held.get(finding.id), self.every)
            ways[finding.id] = tuple(self._way(option, rank) for rank, option in enumerate(options))
            taken = advice.choices.get(finding.id)
            if taken is not None and taken.fix in {option.fix for option in options}:
                chosen[finding.id] = taken.fix
        return Seen(chosen, ways, advice)

    def _way(self, option: Option, rank: int) -> Way:
        grades, ops = option.grades, option.work.ops
        easy, lasting, unseen = (
            (grades.difficulty, grades.durability, grades.visibility) if option.closes else (1, 5, 1)
        )
        return Way(
            option.finding,
            option.fix,
            easy,
            lasting,
            unseen,
            tuple((op.id, op.minutes.likely) for op in ops),
            frozenset(op.id for op in ops if not op.reversible),
            frozenset(need.what.casefold() for op in ops for need in op.materials),
            any(op.setup == "buttonhole" for op in ops),
            int(not option.closes or option.work.leaves > 0),
            rank,
        )

    # Learning

    def learn(self, seen: Seen) -> bool:
        """Take in what a run showed; whether the graph is another now."""
        if any(seen is other for other in self.met):
            return False
        self.met.append(seen)
        new = [finding for finding in seen.ways if finding not in self.influences]
        for finding in new:
            self.influences[finding] = ()
            self._tell_anew(finding)
        changed = bool(new)
        for finding in self.influences:
            if finding not in new:
                changed |= self._take_in(finding, seen)
        self.order = tuple(sorted(self.influences, key=lambda finding: (self.stages[finding], finding)))
        return changed

    def _take_in(self, finding: FindingId, seen: Seen) -> bool:
        cell = self.circumstances(finding, seen.chosen)
        if cell in self.cells[finding]:
            if self.cells[finding][cell] == seen.ways.get(finding):
                return False
            self._tell_anew(finding)
        else:
            self.cells[finding][cell] = seen.ways.get(finding)
        return True

    def _tell_anew(self, finding: FindingId) -> None:
        """The cells of a finding from all runs so far, with as many influences as it takes to tell them apart."""
        cells: Cells = {}
        first: dict[object, Seen] = {}
        for seen in self.met:
            cell = self.circumstances(finding, seen.chosen)
            if cell in cells and cells[cell] != seen.ways.get(finding):
                self._add_influence(finding, first[cell], seen)
                self._tell_anew(finding)
                return
            cells.setdefault(cell, seen.ways.get(finding))
            first.setdefault(cell, seen)
        self.cells[finding] = cells

    def _add_influence(self, finding: FindingId, one: Seen, other: Seen) -> None:
        stage, known = self.stages[finding], self.influences[finding]
        differing = [
            f
            for f in {**one.chosen, **other.chosen}
            if self.stages[f] < stage and f not in known and one.chosen.get(f) != other.chosen.get(f)
        ]
        if not differing:
            raise KnowledgeError(f"the same choices lead to two kinds of {finding}", where="comparing plans")
        self.influences[finding] = (*known, min(differing, key=lambda f: (self.stages[f], f)))

    # Exploring

    def _explore(self) -> None:
        """Every way alone, beside what stands otherwise; then two together where what they write meets."""
        start = self.run({})
        queue, varied = [start], set()
        while queue:
            here = queue.pop(0)
            for finding in here.ways:
                if finding not in varied:
                    varied.add(finding)
                    queue += [self.run(chosen) for chosen in _others(here, finding)]
        self._explore_pairs(start)

    def _explore_pairs(self, start: Seen) -> None:
        touched = self._touched()
        pairs = [
            (one, other)
            for one, other in combinations(sorted(touched), 2)
            if one[0] != other[0]
            and one[0] in start.chosen
            and other[0] in start.chosen
            and start.chosen[one[0]] != one[1]
            and start.chosen[other[0]] != other[1]
            and not touched[one].isdisjoint(touched[other])
        ]
        for pair in pairs[:PAIRS]:
            self.run({**start.chosen, **dict(pair)})

    def _touched(self) -> dict[tuple[FindingId, FixId], frozenset[Key]]:
        """For each fix seen for a finding, the keys it writes and those that a join holds to them."""
        joined: dict[Key, set[Key]] = {}
        for join in self.world.model.joins:
            joined.setdefault(join.a, set()).add(join.b)
            joined.setdefault(join.b, set()).add(join.a)
        found: dict[tuple[FindingId, FixId], set[Key]] = {}
        for seen in self.met:
            for option in seen.advice.options:
                if any(way.fix == option.fix for way in seen.ways[option.finding]):
                    keys = {effect.key for op in option.work.ops for effect in op.effects}
                    keys |= {other for key in keys for other in joined.get(key, ())}
                    found.setdefault((option.finding, option.fix), set()).update(keys)
        return {pick: frozenset(keys) for pick, keys in found.items()}


def _others(here: Seen, finding: FindingId) -> Iterator[dict[FindingId, FixId]]:
    """The choices of a run with another fix for one finding, one for each that there is."""
    for way in here.ways[finding]:
        if here.chosen.get(finding) != way.fix:
            yield {**here.chosen, finding: way.fix}
