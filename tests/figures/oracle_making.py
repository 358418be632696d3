"""Oracles for stitches, thread, needles and minutes."""

import math
from itertools import product
from statistics import fmean

from figure_oracles import ROUNDED, UNITS, from_inches, oracle, path, strip
from shapely import affinity

from advisor.figures import estimate, stitches

# --- stitches


@oracle(stitches.thread, lambda d: {"seam": d.inch(10, 90), "ratio": d.share("2", "6")})
def thread_drawn(seam, ratio):
    return affinity.scale(strip(0, seam), ratio, 1).length


@oracle(stitches.thread_part, lambda d: {"total": d.inch(10, 90), "share": d.share("0", "1")})
def part_of_thread(total, share):
    return strip(0, total).interpolate(share, normalized=True).x


@oracle(
    stitches.thread_by_sample,
    lambda d: {"seam": d.inch(10, 90), "drawn": d.inch(3, 20), "sample": d.inch(1, 6)},
)
def by_sample(seam, drawn, sample):
    return affinity.scale(strip(0, drawn), seam / sample, 1).length


@oracle(stitches.with_waste, lambda d: {"thread": d.inch(10, 90), "waste": d.share("0", "0.3")})
def thread_and_waste(thread, waste):
    return thread + strip(0, thread).interpolate(waste, normalized=True).x


def layers(d):
    return {"thickness": d.inch("1/16", "1/2"), "per_inch": d.whole(3, 20)}


def stitches_walked(thickness, per_inch, threads_along):
    """An inch of seam: every thread along it once, and each stitch down through the cloth and up again."""
    down = path(*[(0, -thickness), (0, thickness)] * int(per_inch)).length
    return (threads_along * from_inches(1) + down) / from_inches(1)


@oracle(stitches.ratio_301, layers)
def lockstitch(thickness, per_inch):
    return stitches_walked(thickness, per_inch, 2)


@oracle(stitches.ratio_101, layers)
def chainstitch(thickness, per_inch):
    return stitches_walked(thickness, per_inch, 3)


@oracle(stitches.ratio_401, layers)
def double_chain(thickness, per_inch):
    return stitches_walked(thickness, per_inch, 4)


@oracle(stitches.mm_per_stitch, lambda d: {"per_inch": d.whole(3, 20)})
def dial(per_inch):
    return (UNITS.inch / per_inch).to(UNITS.mm).magnitude


@oracle(stitches.per_inch, lambda d: {"stitch": d.share("1", "6")})
def to_the_inch(stitch):
    return ((1 / (stitch * UNITS.mm)).to(1 / UNITS.inch)).magnitude


@oracle(stitches.strength_301, lambda d: {"per_inch": d.whole(3, 20), "thread": d.share("1", "6")})
def strength(per_inch, thread):
    """Each stitch puts a thread and a half in the way."""
    return sum(thread + thread / 2 for _ in range(int(per_inch)))


@oracle(stitches.needle_metric, lambda d: {"american": d.whole(8, 18)}, 0)
def needle_counted(american):
    """8 is 60, and each number after it 5 more."""
    return range(60, 115, 5)[american - 8]


@oracle(stitches.needle_blade, lambda d: {"metric": d.whole(60, 120)})
def blade(metric):
    return (metric * UNITS.mm / 100).to(UNITS.mm).magnitude


@oracle(stitches.ticket_metric, lambda d: {"tex": d.whole(8, 210)})
def ticket(tex):
    """Tex is grams to 1000 m; the ticket is three times the metric count, km to the kilogram."""
    grams_per_km = tex * UNITS.gram / UNITS.km
    return 3 * (1 / grams_per_km).to(UNITS.km / UNITS.kg).magnitude


@oracle(stitches.ticket_of_count, lambda d: {"count": d.whole(10, 100), "plies": d.whole(1, 6)})
def ticket_plied(count, plies):
    """Plies add their weight: the count of the whole thread is such that its km weigh the plies' together."""
    weight = sum(1 / count for _ in range(plies))
    return 3 / weight


# --- minutes


def guesses(d):
    low = d.whole(1, 20)
    likely = low + d.whole(0, 20)
    return {"low": low, "likely": likely, "high": likely + d.whole(0, 60)}


@oracle(estimate.expected, guesses)
def six_guesses(low, likely, high):
    return fmean([low, likely, likely, likely, likely, high])


@oracle(estimate.spread, lambda d: {"low": d.whole(0, 10), "high": d.whole(10, 60)})
def sixth_of_range(low, high):
    return strip(low, high).length and strip(low, high).interpolate(1 / 6, normalized=True).x - low


@oracle(estimate.first_time_high, lambda d: {"high": d.whole(1, 90)})
def twice(high):
    return path((high, 0), (high, 0)).length


@oracle(estimate.lined, lambda d: {"minutes": d.whole(1, 90), "factor": d.share("1", "2")})
def lined_work(minutes, factor):
    return affinity.scale(strip(0, minutes), factor, 1).length


@oracle(estimate.sum_expected, lambda d: {"parts": tuple(d.whole(0, 60) for _ in range(d.whole(1, 6)))})
def minutes_walked(parts):
    return math.fsum(parts)


@oracle(estimate.sum_spread, lambda d: {"spreads": tuple(d.whole(0, 30) for _ in range(d.whole(1, 6)))}, ROUNDED)
def spread_of_all_ways(spreads):
    """Every part early or late by its spread, each by itself: the spread over all the ways."""
    ways = [sum(way) for way in product(*[(-part, part) for part in spreads])]
    return math.sqrt(fmean(way**2 for way in ways))


@oracle(
    estimate.day_spread,
    lambda d: {"expected": d.whole(10, 300), "spread": d.whole(0, 40), "shared": d.share("0", "0.5")},
    ROUNDED,
)
def spread_of_good_and_bad_days(expected, spread, shared):
    days, parts = (1 - shared, 1 + shared), (expected - spread, expected + spread)
    ways = [day * part for day, part in product(days, parts)]
    return math.sqrt(fmean(way**2 for way in ways) - fmean(ways) ** 2)
