"""Oracles for buttons, plackets, zippers, stitches and minutes."""

from decimal import ROUND_HALF_UP, Decimal
from itertools import pairwise

from figure_oracles import ROUNDED, UNITS, decimal_inches, from_inches, oracle, path, solve, span, strip
from shapely import Point, affinity

from advisor.figures import buttons, plackets, zippers


def button(d):
    return {"diameter": d.inch("1/4", "1 1/2")}


def thick_button(d):
    return {"diameter": d.inch("1/4", "1 1/2"), "thickness": d.inch("1/16", "1/2")}


def added(length, more):
    """Published rules are told in inches: add in decimal inches."""
    return from_inches(decimal_inches(length) + more)


# --- buttons


@oracle(buttons.hole_flat_thin, button)
def flat_thin(diameter):
    return added(diameter, 0.125)


@oracle(buttons.hole_flat_easy, button)
def flat_easy(diameter):
    return added(diameter, 0.25)


@oracle(buttons.hole_thick, thick_button)
def taped_round(diameter, thickness):
    """Half of a tape laid round the flat button, over one face, one rim, the other face, the other rim."""
    return path((diameter, 0), (0, thickness), (-diameter, 0), (0, -thickness)).length / 2


@oracle(buttons.hole_thick_worked, thick_button)
def taped_round_worked(diameter, thickness):
    return added(taped_round(diameter, thickness), 0.125)


@oracle(buttons.hole_raised, lambda d: {"diameter": d.inch("1/4", 1), "height": d.inch("1/16", "1/2")})
def raised(diameter, height):
    return path((diameter, 0), (0, height)).length


@oracle(buttons.hole_rounded, button)
def rounded_button(diameter):
    return affinity.scale(strip(0, diameter), 1.25, 1).length


@oracle(buttons.hole_ball, button, ROUNDED)
def ball_slit(diameter):
    """A slit opened to a circle has two edges: each is half the way round."""
    return Point(0, 0).buffer(diameter / 2, quad_segs=5000).exterior.length / 2


@oracle(buttons.start_floor, button)
def flush(diameter):
    """The button pulled against the hole's end, its rim just at the edge."""
    return solve(lambda start: Point(start, 0).buffer(diameter / 2).bounds[0], 0)


@oracle(buttons.start_offered, button)
def clear_by_an_eighth(diameter):
    return solve(lambda start: Point(start, 0).buffer(diameter / 2).bounds[0], from_inches(0.125))


@oracle(buttons.start_offered_most, button)
def clear_by_a_quarter(diameter):
    return solve(lambda start: Point(start, 0).buffer(diameter / 2).bounds[0], from_inches(0.25))


@oracle(buttons.start_past_center, lambda d: {"center_to_edge": d.inch("1/2", 2)})
def from_edge(center_to_edge):
    return strip(0, center_to_edge).difference(Point(center_to_edge, 0).buffer(from_inches(0.125))).length


@oracle(buttons.inside_center, lambda d: {"hole": d.inch("1/2", 2)})
def inside(hole):
    return strip(-3.175, hole - 3.175).intersection(strip(0, 500)).length


@oracle(buttons.upright_top, lambda d: {"button": d.inch(1, 20)})
def above_button(button):
    return added(button, -0.125)


@oracle(buttons.edge_three_quarters, button)
def three_quarters(diameter):
    return strip(0, diameter).interpolate(0.75, normalized=True).x


@oracle(buttons.edge_half_and_quarter, button)
def half_and_quarter(diameter):
    return added(strip(0, diameter).interpolate(0.5, normalized=True).x, 0.25)


@oracle(buttons.edge_least, button)
def no_overhang(diameter):
    return solve(lambda edge: edge + Point(0, 0).buffer(diameter / 2).bounds[0], 0)


@oracle(buttons.extension, button)
def as_wide_as_button(diameter):
    return span(Point(0, 0).buffer(diameter / 2))


@oracle(buttons.extension_tiny, button)
def button_and_half(diameter):
    return span(strip(0, diameter).union(strip(diameter, diameter).interpolate(0).buffer(diameter / 2)))


@oracle(buttons.swap_change, lambda d: {"old": d.inch("1/4", "1/2"), "new": d.inch("1/2", 1)})
def larger_by(old, new):
    return taped_round(new, 3) - taped_round(old, 3)


@oracle(buttons.gap_even, lambda d: {"first": d.inch(0, 2), "last": d.inch(10, 30), "buttons": d.whole(2, 12)})
def gap_found(first, last, buttons):
    return solve(lambda gap: first + sum(gap for _ in range(buttons - 1)), last)


def rows(d):
    stress = tuple(sorted(d.inch(1, 20) for _ in range(d.whole(0, 3))))
    return {"first": d.inch(0, 1), "last": d.inch(20, 30), "stress": stress, "most_gap": d.inch(2, 6)}


@oracle(buttons.places, rows)
def set_by_trial(first, last, stress, most_gap):
    """Between fixed buttons try one gap, two, three, until none is too long; place by a drawn line."""
    fixed, found = sorted({first, last, *stress}), [first]
    for start, end in pairwise(fixed):
        gaps = next(n for n in range(1, 500) if (end - start) / n <= most_gap + 1e-9)
        line = strip(start, end)
        found += [line.interpolate(step / gaps, normalized=True).x for step in range(1, gaps + 1)]
    return tuple(found)


@oracle(buttons.gaps_in, lambda d: {"span": d.whole(1, 60), "most_gap": d.whole(1, 12)}, 0)
def gaps_tried(span, most_gap):
    return next(count for count in range(1, 100) if count * most_gap >= span)


@oracle(buttons.last_above_hem, lambda d: {"length": d.inch(20, 50)})
def four_above(length):
    return added(length, -4)


@oracle(buttons.ligne, button)
def lignes(diameter):
    """A ligne is the fortieth of an inch."""
    return decimal_inches(diameter) * 40


@oracle(buttons.ligne_nearest, button, 0)
def lignes_whole(diameter):
    return int(Decimal(str(round(lignes(diameter), 6))).quantize(Decimal(1), ROUND_HALF_UP))


@oracle(buttons.diameter_of, lambda d: {"ligne": d.whole(14, 60)})
def from_lignes(ligne):
    return from_inches(ligne / 40)


@oracle(buttons.tacks_between, lambda d: {"holes": tuple(d.inch(4 * n, 4 * n + 3) for n in range(d.whole(2, 7)))})
def midway(holes):
    return tuple(strip(upper, lower).centroid.x for upper, lower in pairwise(holes))


# --- plackets, facings, flaps


@oracle(plackets.strip_finished, lambda d: {"overlap": d.inch(1, 3)})
def folded_strip(overlap):
    """Out to the edge and back under itself."""
    return path((overlap, 0), (-overlap, 0)).length


@oracle(plackets.strip_cut, lambda d: {"overlap": d.inch(1, 3), "allowance": d.inch("1/4", 1)})
def folded_strip_in_seam(overlap, allowance):
    return path((allowance, 0), (overlap, 0), (-overlap, 0), (-allowance, 0)).length


@oracle(plackets.strip_length, lambda d: {"opening": d.inch(5, 30), "top": d.inch(0, 1), "bottom": d.inch(0, 2)})
def opening_and_ends(opening, top, bottom):
    return span(strip(-top, 0).union(strip(0, opening)).union(strip(opening, opening + bottom)))


@oracle(plackets.overlap_if_cut, lambda d: {"width": d.inch(3, 6), "allowance": d.inch("1/4", 1)})
def overlap_found(width, allowance):
    return solve(lambda overlap: folded_strip_in_seam(overlap, allowance), width)


@oracle(
    plackets.facing_cut,
    lambda d: {"finished": d.inch(1, 3), "allowance": d.inch(0, 1), "finish": d.inch(0, "1/2")},
)
def facing_walked(finished, allowance, finish):
    return path((allowance, 0), (finished, 0), (-finish, 0)).length


def flap_turned(placed, sewn, topstitched):
    """Mouth at y = 0. The flap's raw edge and a mark on it, before and after it is turned over its line."""
    line = placed + sewn
    mark = Point(0, line + topstitched)
    turned = affinity.scale(mark, 1, -1, origin=(0, line))
    return line, turned.y, placed


def flap(d):
    return {"placed": d.inch("1/4", 1), "sewn": d.inch("1/8", "1/4"), "topstitched": d.inch("5/16", "7/16")}


@oracle(plackets.flap_fold_above, lambda d: {"placed": d.inch("1/4", 1), "sewn": d.inch("1/8", "1/4")})
def flap_fold(placed, sewn):
    return Point(0, flap_turned(placed, sewn, 0)[0]).distance(Point(0, 0))


@oracle(plackets.flap_clears_mouth, lambda d: flap(d) | {"placed": d.inch("1/2", 1)})
def flap_clear(placed, sewn, topstitched):
    return flap_turned(placed, sewn, topstitched)[1]


@oracle(
    plackets.flap_edge_covered,
    lambda d: {"sewn": d.inch("1/8", "1/4"), "topstitched": d.inch("5/16", "7/16")},
)
def flap_edge(sewn, topstitched):
    _, second_line, raw_edge = flap_turned(40, sewn, topstitched)
    return raw_edge - second_line


# --- zippers


@oracle(zippers.shorten_by, lambda d: {"zipper": d.inch(14, 30), "opening": d.inch(4, 14)})
def teeth_past_opening(zipper, opening):
    return strip(0, zipper).difference(strip(0, opening)).length if zipper > opening else 0.0


@oracle(zippers.mark_at, lambda d: {"wanted": d.inch(4, 30)})
def marked(wanted):
    return added(wanted, 0.1875)


@oracle(zippers.cut_at, lambda d: {"mark": d.inch(4, 30), "tail": d.inch("1/2", 1)})
def cut_below(mark, tail):
    return path((mark, 0), (tail, 0)).length


@oracle(zippers.top_cut_at, lambda d: {"wanted": d.inch(4, 30)})
def cut_above(wanted):
    return added(wanted, 1.25)


STOCK = "4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 20 21 22 24 26 27 28 30"  # UKSEW, inches


@oracle(zippers.stock_shorter, lambda d: {"opening": d.inch(4, 36)})
def stock_below(opening):
    shorter = [int(size) for size in STOCK.split() if int(size) <= decimal_inches(opening) + 1e-9]
    return from_inches(shorter[-1])


@oracle(zippers.stock_longer, lambda d: {"opening": d.inch(1, 30)})
def stock_above(opening):
    longer = [int(size) for size in STOCK.split() if int(size) >= decimal_inches(opening) - 1e-9]
    return from_inches(longer[0])


@oracle(zippers.label_length, lambda d: {"length": d.inch(4, 30)})
def on_the_label(length):
    centimeters = Decimal(str(round((length * UNITS.mm).to(UNITS.cm).magnitude, 6)))
    return float(centimeters.quantize(Decimal(1), ROUND_HALF_UP)) * 10


@oracle(
    zippers.for_front,
    lambda d: {
        "body": d.inch(20, 40),
        "front_drop": d.inch(1, 4),
        "back_drop": d.inch(0, 2),
        "shorter": d.share("0", "0.05"),
    },
)
def front_zipper(body, front_drop, back_drop, shorter):
    front = strip(0, body).difference(strip(0, front_drop)).difference(strip(body - back_drop, body + 1))
    return affinity.scale(front, 1 - shorter, 1).length
