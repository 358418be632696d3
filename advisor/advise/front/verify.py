"""Whether a combination holds in earnest: all its work can be done in one order, and the finding rules find nothing.

Where work gets in the way of other work, the fixes it belongs to do not go together; as few as show it are named.
"""

from collections.abc import Iterable, Sequence
from itertools import combinations

from advisor.advise.front.explore import Explored, Seen
from advisor.advise.front.graph import Pick
from advisor.advise.front.measure import Found
from advisor.advise.order import ordered
from advisor.advise.plan import merged, open_problems, work_through
from advisor.advise.world import World
from advisor.core.case import FindingId
from advisor.core.work import OpId, Option
from advisor.errors import KnowledgeError

TOGETHER = 3
"""Most fixes that are tried together to find those that hinder each other; else the whole combination is put apart."""


def holds(graph: Explored, found: Found) -> bool:
    """Run a combination and take in what it shows; False if the graph is another now, so that one must search again."""
    seen, changed = graph.look(found.chosen)
    if changed:
        return False
    if dict(seen.chosen) != found.chosen:
        raise KnowledgeError("a combination leads to other choices than it has", where="comparing plans")
    options = seen.advice.chosen()
    apart = hindrance(graph.world, options)
    if not apart:
        final, _ = work_through(ordered(merged(options)[0], graph.world.model.states), graph.world.model)
        remains = {finding.id for finding in seen.advice.remains}
        if not remains <= _left(seen) or open_problems(graph.base, final) != remains:
            apart = frozenset(found.picks)
    if apart:
        graph.apart.add(apart)
    return not apart


def _left(seen: Seen) -> set[FindingId]:
    """The findings that were to stay open."""
    return {
        finding
        for finding, ways in seen.ways.items()
        if not ways or any(way.left and way.fix == seen.chosen.get(finding) for way in ways)
    }


def hindrance(world: World, options: Sequence[Option]) -> frozenset[Pick]:
    """Fixes among these whose work gets in each other's way, as few as show it; empty if all go together."""
    blocked = _blocked(world, options)
    if not blocked:
        return frozenset()
    for size in range(2, TOGETHER + 1):
        for some in combinations(options, size):
            if blocked & _blocked(world, some) and not any(blocked & _blocked(world, [one]) for one in some):
                return _picks(some)
    return _picks(options)


def _picks(options: Iterable[Option]) -> frozenset[Pick]:
    return frozenset((option.finding, option.fix) for option in options)


def _blocked(world: World, options: Sequence[Option]) -> frozenset[OpId]:
    """The operations that cannot be done; a word in their place where there is no order, or one means two things."""
    try:
        ops, _ = merged(options)
        return frozenset(work_through(ordered(ops, world.model.states), world.model)[1])
    except KnowledgeError as fault:
        return frozenset({fault.what})
