"""Option graphs made up from a seed, and what an enumeration of every combination finds in one."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import product
from random import Random

from advisor.advise.front.graph import Cells, Graph, Pick, Way
from advisor.advise.front.measure import Bounds, Found


def made_up(
    seed: int, findings: int, ways: int, knock_ons: int, shared: int = 4, apart: int = 3, lost: float = 0.1
) -> Graph:
    """A graph: the last `knock_ons` findings hang on choices for earlier ones; some operations serve many ways."""
    rng = Random(seed)
    names = [f"f{number:02}" for number in range(findings + knock_ons)]
    common = [(f"shared {number}", rng.randint(5, 40)) for number in range(shared)]
    influences: dict[str, tuple[str, ...]] = dict.fromkeys(names[:findings], ())
    cells: dict[str, Cells] = {}
    for name in names[:findings]:
        cells[name] = {(): _ways(rng, name, ways, common, lost)}
    for at in range(findings, findings + knock_ons):
        name = names[at]
        hangs_on = tuple(sorted(rng.sample(names[:at], min(at, rng.choice((1, 1, 2))))))
        influences[name] = hangs_on
        fixes = [[None, *(way.fix for way in _all(cells[other]))] for other in hangs_on]
        kinds = [None, _ways(rng, name, ways, common, lost), _ways(rng, name, max(1, ways - 2), common, lost)]
        cells[name] = {circumstances: rng.choice(kinds) for circumstances in product(*map(dict.fromkeys, fixes))}
    picks = [way.pick for name in names for way in _all(cells[name])]
    sets = {frozenset(rng.sample(picks, rng.choice((2, 2, 3)))) for _ in range(apart)} if len(picks) > 3 else set()
    return Graph(names, influences, cells, {each for each in sets if len({finding for finding, _ in each}) > 1})


def planned(seed: int) -> Graph:
    """Twelve findings of six ways each, and six more that half the ways of another finding open."""
    rng = Random(seed)
    names = [f"f{number:02}" for number in range(18)]
    common = [(f"shared {number}", rng.randint(5, 40)) for number in range(4)]
    influences: dict[str, tuple[str, ...]] = dict.fromkeys(names[:12], ())
    cells: dict[str, Cells] = {name: {(): _ways(rng, name, 6, common, 0)} for name in names[:12]}
    for name in names[12:]:
        opener = rng.choice(names[:12])
        influences[name] = (opener,)
        opened = _ways(rng, name, 6, common, 0)
        cells[name] = {(way.fix,): opened if rng.random() < 0.5 else None for way in _all(cells[opener])}
    picks = [way.pick for name in names for way in _all(cells[name])]
    pairs = {frozenset(rng.sample(picks, 2)) for _ in range(3)}
    return Graph(names, influences, cells, {pair for pair in pairs if len({finding for finding, _ in pair}) > 1})


def _all(cells: Cells) -> list[Way]:
    return [way for ways in cells.values() for way in ways or ()]


def _ways(rng: Random, name: str, most: int, common: list[tuple[str, int]], lost: float) -> tuple[Way, ...]:
    return tuple(_way(rng, name, number, common, lost) for number in range(most))


def _way(rng: Random, name: str, number: int, common: list[tuple[str, int]], lost: float) -> Way:
    own = [(f"{name} {rng.randrange(4)}", rng.randint(1, 9) * 5) for _ in range(rng.randint(1, 3))]
    taken = rng.sample(common, min(len(common), rng.choice((0, 0, 1, 2))))
    # Some work takes longer for one finding than for another.
    ops = dict([*own, *((op, minutes + rng.choice((0, 0, 0, 5))) for op, minutes in taken)])
    return Way(
        name,
        f"x{number}",
        rng.randint(1, 5),
        rng.randint(1, 5),
        rng.randint(1, 5),
        tuple(ops.items()),
        frozenset(op for op in ops if hash_of(op) % 4 == 0),
        frozenset(rng.sample(("zipper", "thread", "cloth", "tape"), rng.randrange(3))),
        rng.random() < 0.2,
        int(rng.random() < lost),
        number,
    )


def hash_of(text: str) -> int:
    """The same number in every process; an operation can be undone or cannot, whoever does it."""
    return sum(map(ord, text))


def combinations(graph: Graph) -> Iterator[tuple[tuple[Pick, ...], list[Way], int]]:
    """Every combination, told apart by what was chosen: picks, ways, how many findings have none."""

    def further(at: int, ways: list[Way], stuck: int) -> Iterator[tuple[tuple[Pick, ...], list[Way], int]]:
        if at == len(graph.order):
            yield tuple(way.pick for way in ways), ways, stuck
            return
        here = graph.ways(graph.order[at], {way.finding: way.fix for way in ways})
        if not here:
            yield from further(at + 1, ways, stuck + (here is not None))
        for way in here or ():
            yield from further(at + 1, [*ways, way], stuck)

    yield from further(0, [], 0)


def by_enumeration(graph: Graph, bounds: Bounds) -> dict[tuple[int, int, int], tuple[int, int, int]]:
    """The front as the definition says it: per point its (cuts, visibility, rank), the least first."""
    prices = dict(bounds.prices)
    best: dict[tuple[int, int, int], tuple[int, int, int]] = {}
    for picks, ways, stuck in combinations(graph):
        if any(together <= set(picks) for together in graph.apart):
            continue
        minutes: dict[str, int] = {}
        for way in ways:
            for op, count in way.ops:
                minutes.setdefault(op, count)
        things = frozenset().union(*(way.things for way in ways))
        if (
            any(way.difficulty > bounds.hardest or way.durability < bounds.weakest for way in ways)
            or any(way.visibility > bounds.visible for way in ways)
            or (not bounds.cutting and any(way.cuts for way in ways))
            or (not bounds.buttonholes and any(way.holes for way in ways))
            or (bounds.minutes is not None and sum(minutes.values()) > bounds.minutes)
            or (bounds.money is not None and sum(prices.get(thing, 0) for thing in things) > bounds.money)
            or stuck + sum(way.left for way in ways) > bounds.left
        ):
            continue
        axes = (
            max((way.difficulty for way in ways), default=1),
            -min((way.durability for way in ways), default=5),
            sum(minutes.values()),
        )
        rest = (
            len(frozenset().union(*(way.cuts for way in ways))),
            max((way.visibility for way in ways), default=1),
            sum(way.rank for way in ways),
        )
        best[axes] = min(best.get(axes, rest), rest)
    return {
        axes: rest
        for axes, rest in best.items()
        if not any(other != axes and all(a <= b for a, b in zip(other, axes, strict=True)) for other in best)
    }


def told(found: tuple[Found, ...]) -> dict[tuple[int, int, int], tuple[int, int, int]]:
    """What the search found, in the shape of the enumeration."""
    return {each.axes: (each.cuts, each.visibility, each.rank) for each in found}


def random_bounds(seed: int) -> Bounds:
    """Bounds of all kinds, mostly wide ones."""
    rng = Random(seed)
    bounds = Bounds(prices=(("cloth", Fraction(8)), ("tape", Fraction(3)), ("zipper", Fraction(9, 2))))
    if rng.random() < 0.3:
        bounds = replace(bounds, hardest=rng.randint(2, 5), weakest=rng.randint(1, 3))
    if rng.random() < 0.3:
        bounds = replace(bounds, visible=rng.randint(2, 5), buttonholes=rng.random() < 0.5)
    if rng.random() < 0.2:
        bounds = replace(bounds, cutting=False)
    if rng.random() < 0.3:
        bounds = replace(bounds, minutes=rng.randint(30, 200))
    if rng.random() < 0.3:
        bounds = replace(bounds, money=Fraction(rng.randint(0, 20)))
    return bounds
