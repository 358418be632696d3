"""Which plans of a front are worth offering, what each is for, and what bites if none fits the limits."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import combinations
from typing import Any

from advisor.advise.front.graph import Graph
from advisor.advise.front.hunt import cheapest
from advisor.advise.front.measure import Bounds, Found, spent
from advisor.advise.front.search import front
from advisor.core.case import FixId

MOST = 4

QUICKEST, EASIEST, LASTING = "quickest", "easiest", "longest lasting"
UNDONE, UNSEEN = "all of it can be undone", "least to be seen"
NAMES = (QUICKEST, EASIEST, LASTING, UNDONE, UNSEEN)

_VALUES: dict[str, Callable[[Found], int]] = {
    QUICKEST: lambda found: found.minutes,
    EASIEST: lambda found: found.difficulty,
    LASTING: lambda found: -found.durability,
    UNDONE: lambda found: found.cuts,
    UNSEEN: lambda found: found.visibility,
}
"""What each name is given for: the least of these, and among equals the quickest."""

LIMITS = ("minutes", "money", "hardest", "weakest", "visible", "cutting", "buttonholes")
"""The limits that may keep plans out, by their names in `Bounds`."""

_WIDE = Bounds()
CENT = Fraction(1, 100)


@dataclass(frozen=True)
class Named:
    """A combination with what it is for, at least one name."""

    found: Found
    names: tuple[str, ...]


@dataclass(frozen=True)
class Short:
    """A limit that keeps all plans out: its name in `Bounds`, what it would have to be at the least, and a plan then.

    `past`: the fixes of that plan that go past the limit as it is, if it is one on single fixes.
    """

    limit: str
    needed: object
    found: Found
    past: tuple[FixId, ...] = ()


def candidates(graph: Graph, bounds: Bounds) -> tuple[Found, ...]:
    """The front, and beside it the quickest combination that can be undone, and the quickest that shows least."""
    found = list(front(graph, bounds))
    if not found:
        return ()
    found += [each for each in (cheapest(graph, replace(bounds, cutting=False)), _unseen(graph, bounds)) if each]
    return tuple({each.picks: each for each in found}.values())


def _unseen(graph: Graph, bounds: Bounds) -> Found | None:
    shown = (cheapest(graph, replace(bounds, visible=visible)) for visible in range(1, bounds.visible + 1))
    return next((found for found in shown if found), None)


def named(found: Iterable[Found]) -> tuple[Named, ...]:
    """At most four of these, each named by what it is for; one may carry several names, and the quickest is first."""
    found = tuple(found)
    chosen: dict[Found, list[str]] = {}
    for name in NAMES:
        best = _best(name, found)
        if best is None or ((name in (UNDONE, UNSEEN) or len(found) > 1) and not _tells(name, best, found)):
            continue
        if best in chosen or len(chosen) < MOST:
            chosen.setdefault(best, []).append(name)
    return tuple(Named(each, tuple(names)) for each, names in chosen.items())


def _best(name: str, found: Iterable[Found]) -> Found | None:
    value = _VALUES[name]
    best = min(found, key=lambda each: (value(each), each.minutes, each.axes, each.picks), default=None)
    return None if best is None or (name == UNDONE and best.cuts) else best


def _tells(name: str, best: Found, found: Iterable[Found]) -> bool:
    """Whether the name sets a plan apart from another; one has to be the quickest."""
    return name == QUICKEST or any(_VALUES[name](each) != _VALUES[name](best) for each in found)


def too_tight(graph: Graph, bounds: Bounds) -> tuple[tuple[Short, ...], ...]:
    """Which limits would have to give way, if none fits: as few at once as will do, each set with what is needed.

    Each set is told with the plan that comes nearest: in the first of its limits, then in the next.
    """
    held = [name for name in LIMITS if getattr(bounds, name) != getattr(_WIDE, name)]
    for size in range(1, len(held) + 1):
        found = [short for some in combinations(held, size) if (short := _short(graph, bounds, some))]
        if found:
            return tuple(found)
    return ()


def _short(graph: Graph, bounds: Bounds, names: tuple[str, ...]) -> tuple[Short, ...]:
    wide = bounds
    for name in names:
        wide = _set(wide, name, getattr(_WIDE, name))
    if cheapest(graph, wide) is None:
        return ()
    for name in names:
        wide = _tightened(graph, wide, name)
    found = cheapest(graph, wide)
    assert found is not None
    return tuple(Short(name, getattr(wide, name), found, _past(graph, bounds, name, found)) for name in names)


def _past(graph: Graph, bounds: Bounds, name: str, found: Found) -> tuple[FixId, ...]:
    """The fixes of a combination that one limit forbids."""
    only = _set(_WIDE, name, getattr(bounds, name))
    ways = [way for finding, _ in found.picks for way in graph.ways(finding, found.chosen) or ()]
    return tuple(way.fix for way in ways if found.chosen[way.finding] == way.fix and not only.allows(way))


def _set(bounds: Bounds, name: str, value: Any) -> Bounds:
    return replace(bounds, **{name: value})


def _tightened(graph: Graph, bounds: Bounds, name: str) -> Bounds:
    """`bounds` with this limit as near to nothing as still lets a plan through."""
    if name in ("hardest", "visible", "weakest"):
        grades = range(5, 0, -1) if name == "weakest" else range(1, 6)
        return next(each for each in (_set(bounds, name, grade) for grade in grades) if cheapest(graph, each))
    if name == "minutes":
        found = cheapest(graph, bounds)
        assert found is not None
        return replace(bounds, minutes=found.minutes)
    if name == "money":
        return _least_money(graph, bounds)
    return bounds


def _least_money(graph: Graph, bounds: Bounds) -> Bounds:
    """The least money that will do: less and less, until nothing can be had for it."""
    found = cheapest(graph, bounds)
    while found is not None:
        bounds = replace(bounds, money=spent(found, bounds.prices))
        found = cheapest(graph, replace(bounds, money=spent(found, bounds.prices) - CENT))
    return bounds
