"""The search finds what an enumeration of every combination finds. Oracle: the definition of the front, brute force."""

from dataclasses import replace
from fractions import Fraction
from random import Random

import pytest

from advisor.advise.front.graph import Graph, Way
from advisor.advise.front.hunt import cheapest
from advisor.advise.front.measure import NEVER, Bounds, spent
from advisor.advise.front.naming import LASTING, QUICKEST, UNDONE, candidates, named, too_tight
from advisor.advise.front.search import front
from tests.plans.graphs import by_enumeration, combinations, made_up, random_bounds, told


@pytest.mark.parametrize("block", range(10))
def test_the_front_is_that_of_brute_force_on_500_graphs(block: int) -> None:
    several = 0
    for seed in range(block * 50, block * 50 + 50):
        rng = Random(seed)
        graph = made_up(seed, rng.randint(2, 4), rng.randint(2, 4), rng.randint(0, 2))
        bounds = random_bounds(seed)
        least = cheapest(graph, bounds)
        bounds = replace(bounds, left=least.left if least else NEVER)
        expected = by_enumeration(graph, bounds)
        assert told(front(graph, bounds)) == expected, seed
        several += len(expected) > 1
    assert several > 5


def test_graphs_with_much_in_common_are_no_harder() -> None:
    for seed in range(12):
        graph = made_up(seed, 4, 4, 1, shared=8, apart=6, lost=0.3)
        least = cheapest(graph, Bounds())
        bounds = Bounds(left=least.left if least else NEVER)
        assert told(front(graph, bounds)) == by_enumeration(graph, bounds), seed


def test_as_few_findings_stay_open_as_can_be() -> None:
    for seed in range(60):
        graph = made_up(seed, 3, 3, 2, lost=0.5)
        left = [
            stuck + sum(way.left for way in ways) for picks, ways, stuck in combinations(graph) if _goes(graph, picks)
        ]
        least = cheapest(graph, Bounds())
        assert (least.left if least else None) == min(left, default=None), seed


def _goes(graph: Graph, picks: tuple[tuple[str, str], ...]) -> bool:
    return not any(together <= set(picks) for together in graph.apart)


def way(finding: str, fix: str, hard: int, lasts: int, shows: int = 1, **minutes: int) -> Way:
    cuts = frozenset(op for op in minutes if op.startswith("cut"))
    return Way(finding, fix, hard, lasts, shows, tuple(minutes.items()), cuts, frozenset({f"{fix} stuff"}))


# By hand: opening the band (20) serves both findings once. Quick: pins 10 + tape 5. Lasting: 20 + 30 + 25 = 75, and
# not 95; with darts in place of the seam nothing is cut: 20 + 40 + 25 = 85.
HAND = Graph(
    ("band", "waist"),
    {"band": (), "waist": ()},
    {
        "waist": {
            (): (
                way("waist", "pins", 1, 1, 4, pin=10),
                way("waist", "seam", 3, 5, 1, open=20, cut_seam=30),
                way("waist", "darts", 4, 5, 2, open=20, sew_darts=40),
            )
        },
        "band": {(): (way("band", "tape", 1, 2, 3, glue=5), way("band", "piece", 3, 4, 1, open=20, sew=25))},
    },
)


def test_a_plan_by_hand() -> None:
    found = front(HAND, Bounds())
    assert [(each.minutes, each.difficulty, each.durability, dict(each.picks)) for each in found] == [
        (15, 1, 1, {"waist": "pins", "band": "tape"}),
        (55, 3, 2, {"waist": "seam", "band": "tape"}),
        (75, 3, 4, {"waist": "seam", "band": "piece"}),
    ]


def test_at_most_four_are_named_and_one_may_carry_several_names() -> None:
    offers = {each.names: each.found.minutes for each in named(candidates(HAND, Bounds()))}
    assert offers == {
        ("quickest", "easiest", "all of it can be undone"): 15,
        ("longest lasting", "least to be seen"): 75,
    }
    lasting = named(candidates(HAND, Bounds(weakest=4)))
    assert [(each.names, each.found.minutes) for each in lasting] == [
        (("quickest", "easiest", "least to be seen"), 75),
        (("all of it can be undone",), 85),
    ]
    for seed in range(40):
        graph = made_up(seed, 3, 4, 1, lost=0)
        found = candidates(graph, Bounds())
        offered = named(found)
        assert len(offered) <= 4 and len({each.found.picks for each in offered}) == len(offered)
        names = [name for each in offered for name in each.names]
        assert len(names) == len(set(names)) and names[:1] == ([QUICKEST] if found else [])
        for each in offered:
            if LASTING in each.names:
                assert each.found.durability == max(one.durability for one in found)
            if UNDONE in each.names:
                assert not each.found.cuts


def test_the_limit_that_bites_is_told_with_what_is_needed() -> None:
    def bites(bounds: Bounds) -> list[list[tuple[str, object]]]:
        assert cheapest(HAND, bounds) is None
        return [[(short.limit, short.needed) for short in some] for some in too_tight(HAND, bounds)]

    assert bites(Bounds(minutes=14)) == [[("minutes", 15)]]
    # Either she takes five minutes more than the seventy, or puts up with something that lasts 2 and not 3.
    assert bites(Bounds(minutes=70, weakest=3)) == [[("minutes", 75)], [("weakest", 2)]]
    assert bites(Bounds(cutting=False, hardest=3, weakest=4)) == [
        [("hardest", 4)],
        [("weakest", 1)],
        [("cutting", True)],
    ]
    # No single one would do. With 5 minutes more it takes difficulty 3; within 70, what lasts 2; or pins, which show.
    assert bites(Bounds(minutes=70, hardest=2, weakest=4, visible=3)) == [
        [("minutes", 75), ("hardest", 3)],
        [("hardest", 3), ("weakest", 2)],
        [("weakest", 1), ("visible", 4)],
    ]


def test_money_is_counted_once_for_each_thing_and_tells_what_is_missing() -> None:
    prices = (("piece stuff", Fraction(4)), ("seam stuff", Fraction(3)), ("darts stuff", Fraction(5, 2)))
    bounds = Bounds(weakest=4, prices=prices)
    found = cheapest(HAND, replace(bounds, money=Fraction(7)))
    assert found is not None and (found.minutes, spent(found, prices)) == (75, 7)
    found = cheapest(HAND, replace(bounds, money=Fraction(13, 2)))
    assert found is not None and (found.minutes, spent(found, prices)) == (85, Fraction(13, 2))
    short = too_tight(HAND, replace(bounds, money=Fraction(6)))
    assert [[(each.limit, each.needed) for each in some] for some in short] == [
        [("money", Fraction(13, 2))],
        [("weakest", 2)],
    ]
