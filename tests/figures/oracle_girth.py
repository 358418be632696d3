"""Oracles for seams, darts, waist, trunk, letting out and ease."""

import math
from itertools import pairwise, product

from figure_oracles import (
    ROUNDED,
    across,
    from_inches,
    oracle,
    path,
    solve,
    span,
    strip,
    wedge,
)
from shapely import LineString, Point, affinity, box

from advisor.figures import darts, seams, trunk, waist

# --- seams


@oracle(seams.pinch_to_loss, lambda d: {"depth": d.inch(0, 2), "places": d.whole(1, 6)})
def pinched(depth, places):
    line = path(*[(100, 0), (0, depth), (0, -depth)] * places, (100, 0))
    return line.length - span(line)


@oracle(seams.pinch_for, lambda d: {"total": d.inch(0, 6), "places": d.whole(1, 6)})
def pinch_found(total, places):
    return solve(lambda depth: pinched(depth, places), total)


@oracle(seams.each, lambda d: {"total": d.inch(0, 6), "seams": d.whole(1, 8)})
def seam_found(total, seams):
    return solve(lambda amount: sum(strip(0, amount).length for _ in range(seams)), total)


@oracle(seams.each_side, lambda d: {"total": d.inch(0, 6)})
def overlapped(total):
    """Two layers sewn past their edges: the round shrinks by what both give."""

    def lost(line):
        return 1000 - span(strip(0, 500 - line).union(strip(500 - line, 1000 - 2 * line)))

    return solve(lost, total, high=400)


@oracle(seams.per_layer, lambda d: {"total": d.inch(0, 6), "seams": d.whole(1, 8)})
def panels_narrowed(total, seams):
    full = sum(box(0, 0, 1000, 1).area for _ in range(seams))
    return solve(lambda edge: full - sum(box(edge, 0, 1000 - edge, 1).area for _ in range(seams)), total, high=500)


@oracle(
    seams.by_shares,
    lambda d: {"total": d.inch(1, 6), "shares": tuple(d.share("0", "5") + 1 for _ in range(d.whole(1, 6)))},
)
def cut_in_parts(total, shares):
    whole, line, ends = sum(shares), strip(0, total), [0.0]
    for place in range(len(shares)):
        ends.append(line.interpolate(sum(shares[: place + 1]) / whole, normalized=True).x)
    return tuple(after - before for before, after in pairwise(ends))


def whole_caps(d):
    caps = tuple(d.whole(0, 5) for _ in range(d.whole(1, 4)))
    return {"total": d.whole(0, sum(caps)), "caps": caps}


@oracle(seams.in_order, whole_caps)
def first_places_first(total, caps):
    """Of all ways in whole steps that close, the one a dictionary of place order would list last."""
    ways = product(*[range(int(cap) + 1) for cap in caps])
    return max(way for way in ways if sum(way) == total)


@oracle(seams.evenly, whole_caps)
def filled_like_water(total, caps):
    level = solve(lambda level: sum(min(cap, level) for cap in caps), total, high=10)
    return tuple(min(cap, level) for cap in caps)


@oracle(seams.over_limit, lambda d: {"total": d.inch(0, 6), "limit": d.inch(0, 6)})
def beyond(total, limit):
    return strip(0, total).difference(strip(0, limit)).length if total else 0.0


@oracle(seams.loss_at, lambda d: {"total": d.inch(0, 4), "depth": d.inch(0, 10), "length": d.inch(1, 9)})
def wedge_across(total, depth, length):
    return wedge(total, length).intersection(across(-depth)).length


@oracle(seams.bears_at, lambda d: {"spare": d.inch(0, 2), "depth": d.inch(0, 4), "length": d.inch("4 1/16", 9)})
def wedge_as_wide_there(spare, depth, length):
    return solve(lambda total: wedge(total, length).intersection(across(-depth)).length, spare, high=200)


@oracle(
    seams.pocket_gap_left,
    lambda d: {
        "gap": d.inch("4 1/16", 6),
        "total": d.inch(0, 4),
        "depth": d.inch(0, 10),
        "length": d.inch(1, 9),
    },
)
def pockets_drawn(gap, total, depth, length):
    between = LineString([(-gap / 2, -depth), (gap / 2, -depth)])
    return between.difference(wedge(total, length)).length


@oracle(seams.pocket_edge_to_seam, lambda d: {"gap_left": d.inch(1, 6)})
def middle_of_gap(gap_left):
    return strip(0, gap_left).centroid.distance(Point(0, 0))


@oracle(seams.shortest_run_out, lambda d: {"each_side": d.inch("1/16", 2)})
def same_slant(each_side):
    """The triangle of 1/2 in by 5 in, enlarged until it is as deep as the line."""
    known = wedge(12.7, 127)
    larger = affinity.scale(known, each_side / 12.7, each_side / 12.7, origin=(0, 0))
    return larger.bounds[3] - larger.bounds[1]


# --- darts

DART = {"wool": 3, "crisp": 5, "other": 4}  # from memory: 1:3 the limit in wool, 1:5 crisp, 1:4 safe


@oracle(darts.fold_to_stitch, lambda d: {"intake": d.inch("1/8", 3)})
def folded_dart(intake):
    opened = strip(0, intake)
    return opened.interpolate(0.5, normalized=True).distance(Point(intake, 0))


@oracle(darts.leg_length, lambda d: {"intake": d.inch(0, 3), "length": d.inch(1, 9)}, ROUNDED)
def leg_drawn(intake, length):
    return LineString([(intake / 2, 0), (0, -length)]).length


@oracle(
    darts.take_up_at,
    lambda d: {"intake": d.inch("1/8", 3), "from_point": d.inch(0, 4), "length": d.inch(4, 9)},
)
def dart_across(intake, from_point, length):
    return wedge(intake, length).intersection(across(from_point - length)).length


@oracle(darts.most_for_length, lambda d: {"length": d.inch(1, 9), "cloth": d.one_of("wool", "crisp", "other")})
def intake_borne(length, cloth):
    return solve(lambda intake: intake * DART[cloth], length)


@oracle(darts.most_each, lambda d: {"length": d.inch(1, 9), "cloth": d.one_of("wool", "crisp", "other")})
def intake_borne_or_inch(length, cloth):
    return strip(0, intake_borne(length, cloth)).intersection(strip(0, 25.4)).length


@oracle(darts.length_needed, lambda d: {"intake": d.inch(0, 3), "cloth": d.one_of("wool", "crisp", "other")})
def length_found(intake, cloth):
    return sum(intake for _ in range(DART[cloth]))


@oracle(darts.needed, lambda d: {"total": d.whole(0, 60), "most_each": d.whole(1, 12)}, 0)
def darts_counted(total, most_each):
    count = 0
    while count * most_each < total:
        count += 1
    return count


@oracle(darts.needed_in_pairs, lambda d: {"total": d.whole(0, 60), "most_each": d.whole(1, 12)}, 0)
def pairs_counted(total, most_each):
    return next(count for count in range(0, 200, 2) if count * most_each >= total)


@oracle(darts.intake_each, lambda d: {"total": d.inch(0, 6), "darts": d.whole(1, 6)})
def dart_found(total, darts):
    return solve(lambda intake: sum(intake for _ in range(darts)), total)


@oracle(darts.from_center, lambda d: {"quarter": d.inch(6, 14), "pairs": d.whole(1, 4)})
def parted_quarter(quarter, pairs):
    line = strip(0, quarter)
    return tuple(line.interpolate(place / (pairs + 1), normalized=True).x for place in range(1, pairs + 1))


@oracle(darts.cloth_between, lambda d: {"apart": d.inch(3, 6), "first": d.inch(0, 2), "second": d.inch(0, 2)})
def between_two_wedges(apart, first, second):
    left, right = wedge(first, 100), affinity.translate(wedge(second, 100), apart)
    free = LineString([(0, 0), (apart, 0)]).difference(left).difference(right)
    return free.length


@oracle(darts.longest_above_pocket, lambda d: {"waist_to_mouth": d.inch(1, 6)})
def kept_from_mouth(waist_to_mouth):
    return strip(0, waist_to_mouth).difference(strip(waist_to_mouth - 12.7, waist_to_mouth + 12.7)).length


@oracle(darts.past_longest, lambda d: {"length": d.inch(1, 12)})
def past_seven(length):
    return strip(0, length).difference(strip(0, from_inches(7))).length


@oracle(darts.rejoin_at, lambda d: {"length": d.inch(1, 9)})
def two_thirds_down(length):
    return strip(0, length).interpolate(2 / 3, normalized=True).x


@oracle(darts.skirt_share, lambda d: {"excess": d.inch(1, 14), "place": d.one_of("side", "front", "back")})
def percents(excess, place):
    """13 percent for each of 4 side curves, 8 and 16 for 2 front and 2 back darts (PATSTUDIO)."""
    return strip(0, excess).interpolate({"side": 0.13, "front": 0.08, "back": 0.16}[place], normalized=True).x


@oracle(darts.closing_angle, lambda d: {"intake": d.inch("1/8", 3), "length": d.inch(1, 9)}, 0.00051)
def turned_until_closed(intake, length):
    """Turn the right leg about the point until its end is left of the left leg's."""
    end, point = Point(intake / 2, 0), (0, -length)
    return solve(lambda angle: -affinity.rotate(end, angle, origin=point).x, intake / 2, high=180)


@oracle(darts.fold_rise, lambda d: {"intake": d.inch("1/8", 2), "length": d.inch(2, 9)})
def fold_laid_over(intake, length):
    """The middle line, laid over by twice the half angle, drawn on until it meets the neighbor's edge."""
    half = math.degrees(math.atan2(intake / 2, length))
    middle = LineString([(0, -length), (0, 10 * length)])
    laid = affinity.rotate(middle, -2 * half, origin=(0, -length))
    return laid.intersection(across(0)).distance(Point(0, -length)) - length


@oracle(darts.slope, lambda d: {"intake": d.inch(0, 3), "length": d.inch(1, 9)})
def slope_by_angle(intake, length):
    return 2 * math.tan(math.atan2(intake / 2, length))


# --- waist


@oracle(waist.band_finished, lambda d: {"body": d.inch(20, 50), "ease": d.inch(0, 2), "underlap": d.inch(0, 2)})
def band_walked(body, ease, underlap):
    return path((body, 0), (ease, 0), (underlap, 0)).length


@oracle(waist.band_cut, lambda d: {"finished": d.inch(20, 50), "allowance": d.inch(0, 1)})
def band_with_ends(finished, allowance):
    return strip(0, finished).union(strip(-allowance, finished + allowance)).length


@oracle(waist.band_after, lambda d: {"band": d.inch(20, 50), "loss": d.inch(0, 6)})
def band_less_piece(band, loss):
    return strip(0, band).difference(strip(band / 2 - loss / 2, band / 2 + loss / 2)).length


@oracle(waist.to_ease_in, lambda d: {"garment": d.inch(30, 50), "band": d.inch(25, 30)})
def garment_past_band(garment, band):
    return strip(0, garment).difference(strip(0, band)).length


@oracle(
    waist.garment_loss,
    lambda d: {"garment": d.inch(34, 50), "band": d.inch(25, 32), "eased_in": d.inch(0, 1)},
)
def loss_found(garment, band, eased_in):
    return solve(lambda loss: -(garment - loss - eased_in), -band)


@oracle(waist.loops_apart, lambda d: {"band": d.inch(20, 50), "loops": d.whole(1, 9)})
def round_the_ring(band, loops):
    """Loops set on a square band closed on itself: walk it from one to the next."""
    ring = box(0, 0, band / 4, band / 4).exterior
    return ring.length - sum(ring.length / loops for _ in range(loops - 1))


# --- trunk


@oracle(trunk.cut_line, lambda d: {"mark": d.inch(10, 20), "allowance": d.inch(0, 1)})
def cut_past_mark(mark, allowance):
    return strip(0, mark).union(strip(mark, mark + allowance)).bounds[2]


@oracle(
    trunk.strip_cut_off,
    lambda d: {"raised": d.inch(1, 3), "old_allowance": d.inch(0, 1), "allowance": d.inch(0, 1)},
)
def falls_away(raised, old_allowance, allowance):
    """Raw edge at 0, old seam above it, new seam above that; kept is all from an allowance below the new."""
    cloth, new_seam = strip(0, 1000), old_allowance + raised
    return cloth.difference(strip(new_seam - allowance, 1000)).length


@oracle(trunk.loop_loss, lambda d: {"raised": d.inch(0, 4)})
def loop_shortened(raised):
    return box(0, 0, 100, 700).exterior.length - box(0, 0, 100, 700 - raised).exterior.length


@oracle(
    trunk.ease_left,
    lambda d: {"garment_loop": d.inch(60, 75), "raised": d.inch(0, 4), "body_loop": d.inch(50, 60)},
)
def loop_over_body(garment_loop, raised, body_loop):
    front, back = garment_loop * 0.45 - raised, garment_loop * 0.55 - raised
    return front + back - body_loop


@oracle(
    trunk.most_raise,
    lambda d: {"garment_loop": d.inch(64, 75), "body_loop": d.inch(50, 60), "ease": d.inch(1, 4)},
)
def raise_found(garment_loop, body_loop, ease):
    return solve(lambda up: -loop_over_body(garment_loop, up, body_loop), -ease, high=1000)


@oracle(trunk.opening_left, lambda d: {"opening": d.inch(8, 24), "raised": d.inch(0, 4)})
def opening_cut_across(opening, raised):
    return strip(0, opening).difference(strip(5, 5 + raised)).length


@oracle(trunk.level, lambda d: {"left": d.inch(1, "1 3/16"), "right": d.inch("1 1/16", "1 3/16")})
def half_way(left, right):
    return strip(left, right).centroid.x


@oracle(trunk.sides_differ, lambda d: {"left": d.inch(0, 3), "right": d.inch(0, 3)})
def apart(left, right):
    return Point(left, 0).distance(Point(right, 0))
