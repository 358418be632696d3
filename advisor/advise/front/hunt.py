"""The combination of least merit within bounds, by branch and bound.

Two things tie findings together: operations that several share and that are done once, and choices that open or
change other findings or rule other choices out. First it is settled which shared operations are done at all; they
are charged whole, ways that need others drop out, and the minutes of the rest no longer hang on each other. Then the
findings are settled one by one, each soon after those it hangs on. At every turn what is still to come is bounded
from below by the quickest ways there are, so nothing better is ever passed over.
"""

from collections import Counter
from dataclasses import dataclass, replace

from advisor.advise.front.floor import FREE, Floor, Layout, Least
from advisor.advise.front.graph import Graph, Pick, Way
from advisor.advise.front.measure import NEVER, Bounds, Found, Merit
from advisor.advise.front.shares import Own
from advisor.core.case import FindingId, FixId
from advisor.core.work import OpId


def cheapest(graph: Graph, bounds: Bounds) -> Found | None:
    """The combination of least merit within `bounds`; None if there is none."""
    hunt = _Hunt(graph, bounds)
    hunt.settle(0, frozenset(), frozenset())
    return hunt.best


@dataclass(frozen=True)
class _Sofar:
    """The sums over what was decided."""

    left: int = 0
    minutes: int = 0
    cuts: int = 0
    visibility: int = 1
    rank: int = 0
    difficulty: int = 1
    durability: int = 5

    @property
    def merit(self) -> Merit:
        return self.left, self.minutes, self.cuts, self.visibility, self.rank

    def after(self, way: Way, own: Own) -> "_Sofar":
        return _Sofar(
            self.left + way.left,
            self.minutes + own.minutes,
            self.cuts + own.cuts,
            max(self.visibility, way.visibility),
            self.rank + way.rank,
            max(self.difficulty, way.difficulty),
            min(self.durability, way.durability),
        )


@dataclass(frozen=True)
class _Live:
    """What still matters of the choices made: influences, and picks that rule others out."""

    influences: tuple[FindingId, ...]
    picks: tuple[Pick, ...]


class _Hunt:
    """Choices are made one finding after the other, and unmade on the way back."""

    def __init__(self, graph: Graph, bounds: Bounds) -> None:
        self.graph, self.bounds = graph, bounds
        self.layout = Layout(graph, bounds)
        self.order = self.layout.order
        self.best: Found | None = None
        self.best_merit: Merit = (NEVER, NEVER, NEVER, NEVER, NEVER)
        self.chosen: dict[FindingId, FixId] = {}
        self.bought: Counter[str] = Counter()
        self.prices = dict(bounds.prices)
        self.taken: dict[FindingId, Way] = {}
        first = self.layout.bundles.first
        self.varied = [[f for f in self.order[:at] if f in first] for at in range(len(self.order) + 1)]
        self.live = [self._alive(at) for at in range(len(self.order) + 1)]
        self.apart: dict[Pick, list[frozenset[Pick]]] = {}
        for together in graph.apart:
            for pick in together:
                self.apart.setdefault(pick, []).append(together - {pick})

    def _alive(self, at: int) -> _Live:
        """What of the choices made before a place in the order still matters from there on."""
        to_come = set(self.order[at:])
        influences = {influence for finding in to_come for influence in self.graph.influences[finding]} - to_come
        apart = [together for together in self.graph.apart if any(finding in to_come for finding, _ in together)]
        picks = {pick for together in apart for pick in together if pick[0] not in to_come}
        return _Live(tuple(sorted(influences)), tuple(sorted(picks)))

    # Which shared operations are done

    def settle(self, at: int, done: frozenset[int], undone: frozenset[int]) -> None:
        """Settle the bundles from this place on, the more promising way first."""
        floor = Floor(self.layout, done, undone)
        sums = floor.sums()
        if not self._may_win(self._start(done), sums[0]):
            return
        if at == len(self.layout.bundles.all):
            self.floor, self.sums = floor, sums
            self.met: dict[object, list[Merit]] = {}
            self.decide(0, self._start(done))
            return
        self.settle(at + 1, done, undone | {at})
        self.settle(at + 1, done | {at}, undone)

    def _start(self, done: frozenset[int]) -> _Sofar:
        bundles = [self.layout.bundles.all[at] for at in done]
        return _Sofar(minutes=sum(each.minutes for each in bundles), cuts=sum(each.cuts for each in bundles))

    # Which fixes are chosen

    def decide(self, at: int, sofar: _Sofar) -> None:
        """All ways on from here that may still be better than the best."""
        if at == len(self.order):
            self._take(sofar)
            return
        finding = self.order[at]
        self.graph.ways(finding, self.chosen)  # one that explores as it is asked looks now
        cell = self.graph.circumstances(finding, self.chosen)
        steps = self.layout.steps[finding, cell]
        if steps is None or (finding, cell) in self.layout.stuck:
            self._onward(at + 1, sofar if steps is None else _stuck(sofar))
            return
        floor = self.floor
        ways = [(way, own) for way, own in steps if own.bundles <= floor.done and not self._hindered(way)]
        after = sorted(((sofar.after(way, own), way) for way, own in ways), key=lambda s: (s[0].merit, s[1].fix))
        for reached, way in after:
            if reached.merit >= self.best_merit:
                return
            self.chosen[finding], self.taken[finding] = way.fix, way
            self.bought.update(way.things)
            if not self._too_dear():
                self._onward(at + 1, reached)
            del self.chosen[finding], self.taken[finding]
            self.bought.subtract(way.things)

    def _onward(self, at: int, sofar: _Sofar) -> None:
        left, minutes = self.sums[at]
        for finding in self.order[at:]:
            anchor = self.layout.anchor.get(finding)
            if anchor is None:
                break  # those that hang on what is decided come first
            if anchor not in self.order[at:]:
                more = self._hanging(finding)
                left, minutes = left + more[0], minutes + more[1]
        if self._may_win(sofar, (left, minutes)) and self._is_news(sofar, at):
            self.decide(at, sofar)

    def _hanging(self, finding: FindingId) -> Least:
        """What a finding not yet decided can add, all it hangs on being decided."""
        cell = self.graph.circumstances(finding, self.chosen)
        return self.floor.of_cell(finding, cell) if cell in self.graph.cells[finding] else (0, 0)

    def _may_win(self, sofar: _Sofar, to_come: Least) -> bool:
        """Whether something within bounds, and better than the best, may still come of this."""
        left, minutes = sofar.left + to_come[0], sofar.minutes + to_come[1]
        if minutes >= NEVER or left > self.bounds.left:
            return False
        if self.bounds.minutes is not None and minutes > self.bounds.minutes:
            return False
        return (left, minutes, sofar.cuts, sofar.visibility, sofar.rank) < self.best_merit

    def _is_news(self, sofar: _Sofar, at: int) -> bool:
        """Whether no other way to where all that is to come looks the same was as good in everything."""
        live = self.live[at]
        key = (
            at,
            tuple([self.chosen.get(finding) for finding in live.influences]),
            frozenset([pick for pick in live.picks if self.chosen.get(pick[0]) == pick[1]]),
            tuple([self.chosen.get(finding) for finding in self.varied[at]]),
            frozenset(+self.bought) if self.bounds.money is not None else None,
        )
        merit, met = sofar.merit, self.met.setdefault(key, [])
        if any(all(a <= b for a, b in zip(other, merit, strict=True)) for other in met):
            return False
        met.append(merit)
        return True

    def _hindered(self, way: Way) -> bool:
        return any(
            all(self.chosen.get(finding) == fix for finding, fix in others) for others in self.apart.get(way.pick, ())
        )

    def _too_dear(self) -> bool:
        if self.bounds.money is None:
            return False
        return sum(self.prices.get(thing, 0) for thing, count in self.bought.items() if count) > self.bounds.money

    def _longer(self) -> int:
        """How much longer shared operations take than was counted, by who has them done first."""
        first: dict[OpId, int] = {}
        for finding in self.graph.order:
            if finding in self.taken and finding in self.layout.bundles.first:
                for op, minutes in self.taken[finding].ops:
                    first.setdefault(op, minutes)
        return sum([first[op] - least for op, least in self.layout.bundles.varying.items() if op in first])

    def _take(self, sofar: _Sofar) -> None:
        sofar = replace(sofar, minutes=sofar.minutes + self._longer())
        if self._may_win(sofar, FREE):
            picks = tuple((finding, self.chosen[finding]) for finding in self.graph.order if finding in self.chosen)
            self.best_merit = sofar.merit
            self.best = Found(
                picks,
                sofar.difficulty,
                sofar.durability,
                sofar.visibility,
                sofar.minutes,
                sofar.cuts,
                sofar.left,
                sofar.rank,
                frozenset(+self.bought),
            )


def _stuck(sofar: _Sofar) -> _Sofar:
    return replace(sofar, left=sofar.left + 1)
