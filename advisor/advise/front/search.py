"""The front: all combinations that no other beats on difficulty, durability and minutes, from one hunt per bound."""

from dataclasses import replace

from advisor.advise.front.graph import Graph
from advisor.advise.front.hunt import cheapest
from advisor.advise.front.measure import Bounds, Found

GRADES = range(1, 6)


def front(graph: Graph, bounds: Bounds) -> tuple[Found, ...]:
    """All combinations within `bounds` that no other beats on difficulty, durability and minutes; quickest first."""
    found: dict[tuple[int, int], Found] = {}
    for hardest in reversed(range(1, bounds.hardest + 1)):
        for weakest in range(bounds.weakest, GRADES[-1] + 1):
            # What is best within wider bounds, and keeps these, is best within these.
            wider = (best for (most, least), best in found.items() if most >= hardest and least <= weakest)
            if any(best.difficulty <= hardest and best.durability >= weakest for best in wider):
                continue
            best = cheapest(graph, replace(bounds, hardest=hardest, weakest=weakest))
            if best is None:
                break
            found[hardest, weakest] = best
    undominated = [one for one in found.values() if not any(_beats(other, one) for other in found.values())]
    return tuple(sorted(undominated, key=lambda each: (each.minutes, each.axes, each.picks)))


def _beats(one: Found, other: Found) -> bool:
    return one.axes != other.axes and all(a <= b for a, b in zip(one.axes, other.axes, strict=True))
