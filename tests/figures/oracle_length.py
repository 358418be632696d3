"""Oracles for gathers, pleats, hems, shrinkage, elastic and patches."""

import math

from figure_oracles import ROUNDED, UNITS, across, from_inches, oracle, path, solve, span, strip
from shapely import LineString, Point, Polygon, affinity, box

from advisor.figures import elastic, gathers, hems, patches, pleats, shrinkage

# --- gathers

TAKE_UP = {"soft wool": (8, 10), "cotton": (4, 5), "close": (2, 3), "coated": (0, 1)}  # percent, from memory


def waves(flat, finished, count=16):
    """Cloth of length `flat` standing in waves over `finished`."""
    along = finished / (2 * count)
    up = math.sqrt(max((flat / (2 * count)) ** 2 - along**2, 0))
    return path(*[(along, up), (along, -up)] * count)


@oracle(gathers.ratio, lambda d: {"long": d.inch(10, 20), "short": d.inch(5, 10)})
def drawn_up(long, short):
    line = waves(long, short)
    return line.length / span(line)


@oracle(gathers.quarter, lambda d: {"round": d.inch(20, 60)})
def quarter_of_ring(round):
    ring = box(0, 0, round / 4, round / 4).exterior
    return LineString(list(ring.coords)[:2]).length


@oracle(gathers.zone_fullness, lambda d: {"excess": d.inch(0, 8), "zone": d.inch(1, 10)})
def waves_in_zone(excess, zone):
    line = waves(zone + excess, zone)
    return line.length / span(line)


@oracle(gathers.zone_for, lambda d: {"excess": d.inch(1, 8), "fullness": d.share("1.1", "3")})
def zone_found(excess, fullness):
    return solve(lambda zone: -waves_in_zone(excess, zone), -fullness, low=1e-3)


@oracle(gathers.cloth_for, lambda d: {"finished": d.inch(1, 60), "fullness": d.share("1", "4")})
def cloth_found(finished, fullness):
    return solve(lambda flat: flat / finished, fullness)


@oracle(gathers.excess, lambda d: {"long": d.inch(10, 20), "short": d.inch(5, 10)})
def longer_part(long, short):
    return strip(0, long).difference(strip(0, short)).length if long > short else 0.0


@oracle(gathers.ease_sure, lambda d: {"edge": d.inch(5, 20), "cloth": d.one_of(*TAKE_UP)})
def sure_percent(edge, cloth):
    return strip(0, edge).interpolate(TAKE_UP[cloth][0] / 100, normalized=True).x


@oracle(gathers.ease_most, lambda d: {"edge": d.inch(5, 20), "cloth": d.one_of(*TAKE_UP)})
def most_percent(edge, cloth):
    return strip(0, edge).interpolate(TAKE_UP[cloth][1] / 100, normalized=True).x


@oracle(gathers.rows_at, lambda d: {"allowance": d.inch("5/8", 1), "rows": d.whole(1, 3)})
def rows_walked(allowance, rows):
    """From the raw edge: the seam line, then stepping 1/4 in back toward the edge."""
    line, found = path((allowance, 0), *[(-from_inches(0.25), 0)] * (rows - 1)), []
    for x, _ in list(line.coords)[1:]:
        found.append(x)
    return tuple(found)


@oracle(gathers.stitch_length, lambda d: {"per_inch": d.whole(3, 20)})
def stitch_by_pint(per_inch):
    return (1 / (per_inch / UNITS.inch)).to(UNITS.mm).magnitude


# --- pleats and tucks


def knife(pleats, spacing, underfold):
    """Forward over the visible part, back under it, forward again."""
    return path(*[(spacing, 0), (-underfold, 0.0), (underfold, 0.0)] * pleats)


@oracle(pleats.depth_each, lambda d: {"excess": d.inch(1, 8), "pleats": d.whole(1, 6)})
def depth_found(excess, pleats):
    def taken(depth):
        line = path(*[(200, 0), (0, depth), (0, -depth)] * pleats)
        return line.length - span(line)

    return solve(taken, excess)


@oracle(pleats.needed, lambda d: {"excess": d.whole(0, 60), "most_depth": d.whole(1, 8)}, 0)
def pleats_counted(excess, most_depth):
    return next(count for count in range(200) if count * (most_depth + most_depth) >= excess)


@oracle(pleats.knife_multiple, lambda d: {"underfold": d.inch(0, 2), "spacing": d.inch("1/2", 2)})
def knife_walked(underfold, spacing):
    steps = [(spacing, 0), (-underfold, 0.0), (underfold, 0.0)] * 9
    return sum(abs(along) for along, _ in steps) / sum(along for along, _ in steps)


@oracle(
    pleats.knife_cloth,
    lambda d: {"finished": d.inch(5, 40), "underfold": d.inch(0, 2), "spacing": d.inch("1/2", 2)},
)
def knife_over_width(finished, underfold, spacing):
    return finished * knife(7, spacing, underfold).length / (7 * spacing)


@oracle(pleats.touching_cloth, lambda d: {"finished": d.inch(5, 40)})
def three_layers(finished):
    return knife(4, finished / 4, finished / 4).length


@oracle(pleats.gapped_finished, lambda d: {"pleats": d.whole(1, 8), "width": d.inch(1, 2), "gap": d.inch(0, 2)})
def gapped_span(pleats, width, gap):
    return span(path(*[(width, 0), (-width, 0), (width, 0), (gap, 0)] * pleats))


@oracle(pleats.gapped_cloth, lambda d: {"pleats": d.whole(1, 8), "width": d.inch(1, 2), "gap": d.inch(0, 2)})
def gapped_length(pleats, width, gap):
    return path(*[(width, 0), (-width, 0), (width, 0), (gap, 0)] * pleats).length


@oracle(
    pleats.fold_lines,
    lambda d: {
        "first": d.inch(0, 2),
        "pleats": d.whole(1, 6),
        "spacing": d.inch(1, 2),
        "underfold": d.inch("1/4", 1),
    },
)
def folds_met(first, pleats, spacing, underfold):
    """Walk the flat cloth and note where the direction turns back: those are the visible folds."""
    used, folds = first - spacing, []
    for step in [spacing, -underfold, underfold] * pleats:
        if step < 0:
            folds.append(used)
        used += abs(step)
    return tuple(folds)


@oracle(pleats.placement_line, lambda d: {"fold": d.inch(0, 9), "underfold": d.inch("1/4", 1)})
def laid_on(fold, underfold):
    """Where the folded cloth, back under and forward again, comes out below its own fold."""
    return solve(lambda used: fold - underfold + (used - fold - underfold), fold, low=fold)


@oracle(pleats.tucks_extra, lambda d: {"depth": d.inch("1/8", 1), "tucks": d.whole(1, 9)})
def tucks_walked(depth, tucks):
    line = path(*[(50, 0), (0, depth), (0, -depth)] * tucks)
    return line.length - span(line)


@oracle(pleats.tuck_layers, lambda d: {"depth": d.inch("1/8", 1)})
def tuck_flat(depth):
    return path((depth, 0), (-depth, 0), (depth, 0)).length


@oracle(pleats.hidden_room, lambda d: {"spacing": d.inch(1, 2), "underfold": d.inch(0, 1)})
def room_under(spacing, underfold):
    return strip(0, spacing).difference(strip(spacing - underfold, spacing)).length


# --- hems


@oracle(hems.single_turn, lambda d: {"depth": d.inch(1, 3), "finish": d.inch(0, "1/2")})
def turned_once(depth, finish):
    return path((0, depth), (0, -finish)).length


@oracle(hems.double_fold, lambda d: {"fold": d.inch("1/4", 2)})
def turned_twice(fold):
    """Up by the fold, and the part inside it down again."""
    return path((0, fold), (0, -fold)).length


@oracle(hems.two_turns, lambda d: {"under": d.inch("1/4", 1), "depth": d.inch(1, 3)})
def turned_under_and_up(under, depth):
    return path((0, depth), (0, -under)).length


@oracle(hems.cut_off, lambda d: {"too_long": d.inch(2, 5), "allowance": d.inch(0, 2)})
def cut_found(too_long, allowance):
    """Garment 900 long: after the cut and the turn it must be 900 less the excess."""
    return solve(lambda cut: -(900 - cut - allowance), -(900 - too_long))


@oracle(
    hems.cut_off_opened,
    lambda d: {"too_long": d.inch(2, 5), "old_hem": d.inch(0, 3), "allowance": d.inch(0, 2)},
)
def cut_found_opened(too_long, old_hem, allowance):
    return solve(lambda cut: -(900 + old_hem - cut - allowance), -(900 - too_long))


@oracle(hems.keep_edge_fold, lambda d: {"too_long": d.inch(1, 5)})
def fold_above_edge(too_long):
    return solve(lambda fold: 900 - path((900 - 2 * fold, 0)).length, too_long, high=450)


@oracle(hems.gain, lambda d: {"old_hem": d.inch(1, 4), "keep": d.inch(0, 1)})
def let_down(old_hem, keep):
    return strip(0, 900 + old_hem).difference(strip(900 + old_hem - keep, 2000)).length - 900


@oracle(hems.false_strip, lambda d: {"flat_width": d.inch(6, 15), "seam": d.inch("1/4", 1)})
def round_the_leg(flat_width, seam):
    return box(0, 0, flat_width, 0.0001).exterior.length - 0.0002 + seam


@oracle(hems.below_old_fold, lambda d: {"worn": d.inch(0, 1), "allowance": d.inch(1, 3)})
def below_fold(worn, allowance):
    return path((0, -worn), (0, -allowance)).length


@oracle(hems.leg_front, lambda d: {"opening": d.inch(12, 24)})
def front_found(opening):
    """Two parts that make the opening, the back wider by 1 1/2 in."""
    return solve(lambda front: front + (front + from_inches(1.5)), opening)


@oracle(hems.leg_back, lambda d: {"opening": d.inch(12, 24)})
def back_found(opening):
    return opening - front_found(opening)


@oracle(hems.slit_allowance, lambda d: {"slit": d.inch(0, 6)})
def past_the_slit(slit):
    return path((0, slit), (0, from_inches(1))).length


@oracle(
    hems.turn_up_difference,
    lambda d: {"depth": d.inch("1/2", 3), "change": d.inch(0, 6), "run": d.inch(6, 20)},
)
def trapezoid_folded(depth, change, run):
    """One layer of a leg of two, narrowing by half the change over each run, folded up at y = 0."""
    top, foot = 500.0, 500.0 - change
    layer = Polygon([(-top / 2, run), (top / 2, run), (foot / 2, -run), (-foot / 2, -run)])
    edge = affinity.scale(layer.intersection(across(-depth)), 1, -1, origin=(0, 0))
    meets = layer.intersection(across(depth))
    return 2 * (meets.length - edge.length)


@oracle(hems.mirror_each_edge, lambda d: {"difference": d.inch(0, 3), "edges": d.whole(1, 8)})
def edge_found(difference, edges):
    return solve(lambda move: sum(move for _ in range(edges)), difference)


def arc(radius, part):
    """A part of a circle as a line of 4,000 corners."""
    turn = 2 * math.pi * part
    return LineString([(radius * math.cos(turn * i / 4000), radius * math.sin(turn * i / 4000)) for i in range(4001)])


ARC = 0.002


@oracle(hems.circle_excess, lambda d: {"depth": d.inch("1/8", 3), "part": d.share("0.1", "1")}, ARC)
def arcs_apart(depth, part):
    return arc(900 + depth, part).length - arc(900 - depth, part).length


@oracle(hems.circle_length, lambda d: {"radius": d.inch(4, 40), "part": d.share("0.1", "1")}, ARC)
def arc_length(radius, part):
    return arc(radius, part).length


@oracle(hems.circle_radius, lambda d: {"length": d.inch(20, 60), "part": d.share("0.25", "1")}, ARC)
def radius_found(length, part):
    ring = arc(1, part).length
    return solve(lambda radius: radius * ring, length)


# --- shrinkage


@oracle(shrinkage.share, lambda d: {"before": d.inch(10, 20), "after": d.inch(5, 10)})
def share_found(before, after):
    return solve(lambda share: -before * (1 - share), -after, high=1)


@oracle(shrinkage.loss, lambda d: {"length": d.inch(10, 20), "share": d.share("0", "0.2")})
def shrunk_away(length, share):
    return strip(0, length).length - affinity.scale(strip(0, length), 1 - share, 1).length


@oracle(shrinkage.after, lambda d: {"length": d.inch(10, 20), "share": d.share("0", "0.2")})
def shrunk(length, share):
    return affinity.scale(strip(0, length), 1 - share, 1).length


@oracle(shrinkage.before, lambda d: {"wanted": d.inch(10, 20), "share": d.share("0", "0.2")})
def shrunk_to(wanted, share):
    return solve(lambda length: shrunk(length, share), wanted)


# --- elastic


@oracle(elastic.cut, lambda d: {"finished": d.inch(6, 20), "share": d.share("0.8", "1"), "join": d.inch(0, 2)})
def elastic_laid(finished, share, join):
    return affinity.scale(strip(0, finished), share, 1).length + join


@oracle(
    elastic.casing_cut,
    lambda d: {"elastic": d.inch("1/4", 2), "room": d.inch(0, "1/4"), "turn_under": d.inch(0, "1/2")},
)
def casing_walked(elastic, room, turn_under):
    return path((0, elastic + room), (0, -turn_under)).length


@oracle(elastic.back_finished, lambda d: {"back": d.inch(12, 20), "loss": d.inch(0, 4)})
def back_drawn_up(back, loss):
    return strip(0, back).difference(strip(1, 1 + loss)).length


@oracle(
    elastic.stretched,
    lambda d: {"cloth_round": d.inch(30, 50), "rest_round": d.inch(20, 30), "stretch": d.share("1", "2")},
)
def pulled(cloth_round, rest_round, stretch):
    longest = affinity.scale(strip(0, rest_round), stretch, 1, origin=(0, 0))
    return longest.intersection(strip(0, cloth_round)).length


@oracle(elastic.opening_needed, lambda d: {"part": d.inch(20, 50)})
def part_and_an_inch(part):
    return path((part, 0), (from_inches(1), 0)).length


@oracle(elastic.pass_margin, lambda d: {"stretched": d.inch(20, 50), "part": d.inch(20, 50)})
def to_spare(stretched, part):
    return solve(lambda more: part + from_inches(1) + more, stretched, low=-1e5)


# --- patches


@oracle(patches.finished, lambda d: {"hole": d.inch(0, 3), "weak": d.inch(0, 1), "margin": d.inch("1/2", 1)})
def patch_grown(hole, weak, margin):
    return span(box(0, 0, hole + 1, 1).buffer(weak + margin, join_style="mitre")) - 1


@oracle(patches.cut, lambda d: {"hole": d.inch(0, 3), "margin": d.inch("1/2", 1), "turn_under": d.inch(0, "1/4")})
def patch_grown_twice(hole, margin, turn_under):
    finished = box(0, 0, hole + 1, 1).buffer(margin, join_style="mitre")
    return span(finished.buffer(turn_under, join_style="mitre") if turn_under else finished) - 1


def patch_sizes(d):
    return {"width": d.inch(3, 9), "height": d.inch(3, 9), "corner": d.inch("1/4", 1)}


def rounded_patch(width, height, corner):
    return box(corner, corner, width - corner, height - corner).buffer(corner, quad_segs=2000)


@oracle(patches.cloth_area, patch_sizes, 0.01)
def patch_area(width, height, corner):
    return rounded_patch(width, height, corner).area


@oracle(patches.edge_length, patch_sizes, ROUNDED)
def patch_edge(width, height, corner):
    return rounded_patch(width, height, corner).length


@oracle(patches.darn_span, lambda d: {"tear": d.inch(0, 2), "beyond": d.inch("1/4", 1)})
def darn_over(tear, beyond):
    return span(strip(0, tear).buffer(beyond)) if tear else span(Point(0, 0).buffer(beyond))
