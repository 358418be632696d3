"""The least that findings can add, whatever is chosen for the others: what a search may count on while it looks."""

from collections.abc import Iterable, Sequence

from advisor.advise.front.graph import Circumstances, Graph, Way
from advisor.advise.front.measure import NEVER, Bounds
from advisor.advise.front.shares import Bundles, Own
from advisor.core.case import FindingId, FixId

Least = tuple[int, int]
"""Findings left open, and minutes; each the least by itself."""

FREE: Least = (0, 0)


def knock_ons_early(graph: Graph) -> tuple[FindingId, ...]:
    """The findings in an order in which each comes soon after those it hangs on, and those nothing hangs on last."""
    hung_on = {influence for finding in graph.order for influence in graph.influences[finding]}
    places = {finding: at for at, finding in enumerate(graph.order)}
    waiting = sorted(graph.order, key=lambda finding: (finding not in hung_on, places[finding]))
    order: list[FindingId] = []
    while waiting:
        ready = [finding for finding in waiting if set(graph.influences[finding]) <= set(order)]
        following = [finding for finding in ready if graph.influences[finding]]
        order.append((following or ready)[0])
        waiting.remove(order[-1])
    return tuple(order)


class Layout:
    """What a search looks up again and again: the order, what hangs on what, the ways each circumstance allows."""

    def __init__(self, graph: Graph, bounds: Bounds) -> None:
        self.graph = graph
        self.bundles = Bundles(graph)
        self.order = knock_ons_early(graph)
        places = {finding: at for at, finding in enumerate(self.order)}
        self.anchor: dict[FindingId, FindingId] = {}
        self.hanging: dict[FindingId, list[FindingId]] = {finding: [] for finding in self.order}
        self.cells: dict[tuple[FindingId, FixId | None], list[Circumstances]] = {}
        self.steps: dict[tuple[FindingId, Circumstances], tuple[tuple[Way, Own], ...] | None] = {}
        self.stuck: set[tuple[FindingId, Circumstances]] = set()
        for finding in self.order:
            influences = graph.influences[finding]
            if influences:
                # It hangs on the last decided of those: from then on its circumstances are known.
                last = self.anchor[finding] = max(influences, key=places.__getitem__)
                self.hanging[last].append(finding)
            for cell, ways in graph.cells[finding].items():
                at = cell[influences.index(last)] if influences else None
                self.cells.setdefault((finding, at), []).append(cell)
                kept = [(way, self.bundles.of(way)) for way in ways or () if bounds.allows(way)]
                self.steps[finding, cell] = None if ways is None else tuple(kept)
                if ways is not None and not ways:
                    self.stuck.add((finding, cell))


class Floor:
    """The least that can be added while it is settled so far which bundles are done and which are not."""

    def __init__(self, layout: Layout, done: frozenset[int], undone: frozenset[int]) -> None:
        self.layout, self.done, self.undone = layout, done, undone
        self._cells: dict[tuple[FindingId, Circumstances], Least] = {}
        self._of: dict[tuple[FindingId, FixId | None], Least] = {}
        # A bundle not settled yet is split among the findings that may take it: together they never pay more than it.
        self._split = [
            0 if at in done else bundle.minutes // bundle.findings for at, bundle in enumerate(layout.bundles.all)
        ]

    def sums(self) -> Sequence[Least]:
        """For each place in the order, what the findings from there on add that hang on no earlier one."""
        sums = [FREE]
        for finding in reversed(self.layout.order):
            sums.append(sums[-1] if finding in self.layout.anchor else _plus(sums[-1], self.of(finding, None)))
        return sums[::-1]

    def of(self, finding: FindingId, fix: FixId | None) -> Least:
        """What a finding can add if `fix` was chosen for the one it hangs on."""
        token = finding, fix
        if token not in self._of:
            layout = self.layout
            cells = layout.cells.get(token, ()) if layout.graph.whole(finding) else ()
            self._of[token] = _least([self.of_cell(finding, cell) for cell in cells], FREE)
        return self._of[token]

    def of_cell(self, finding: FindingId, cell: Circumstances) -> Least:
        """What a finding can add in these circumstances, with all that hangs on it."""
        token = finding, cell
        if token not in self._cells:
            self._cells[token] = self._of_steps(finding, cell)
        return self._cells[token]

    def _of_steps(self, finding: FindingId, cell: Circumstances) -> Least:
        steps = self.layout.steps[finding, cell]
        if steps is None or (finding, cell) in self.layout.stuck:
            start = FREE if steps is None else (1, 0)
            return self._with_hanging(start, finding, None)
        open_to = [(way, own) for way, own in steps if own.bundles.isdisjoint(self.undone)]
        return _least([self._of_way(way, own) for way, own in open_to], (0, NEVER))

    def _of_way(self, way: Way, own: Own) -> Least:
        minutes = own.minutes + sum([self._split[bundle] for bundle in own.bundles])
        return self._with_hanging((way.left, minutes), way.finding, way.fix)

    def _with_hanging(self, least: Least, finding: FindingId, fix: FixId | None) -> Least:
        for other in self.layout.hanging[finding]:
            least = _plus(least, self.of(other, fix))
        return least


def _plus(one: Least, other: Least) -> Least:
    return one[0] + other[0], one[1] + other[1]


def _least(found: Iterable[Least], none: Least) -> Least:
    """The least of each by itself; `none` if there are none."""
    found = list(found)
    if not found:
        return none
    return min([left for left, _ in found]), min([minutes for _, minutes in found])
