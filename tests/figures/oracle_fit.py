"""Oracles for letting out and ease."""

from figure_oracles import decimal_inches, from_inches, oracle, path, solve, span, strip
from oracle_girth import panels_narrowed, seam_found
from shapely import Point

from advisor.figures import ease, letout

# --- letting out


@oracle(letout.new_line, lambda d: {"total": d.inch(0, 4)})
def line_outside(total):
    return solve(lambda line: span(strip(-line, 1000 + line)) - 1000, total)


@oracle(letout.holds, lambda d: {"allowance": d.inch(0, 2), "keep": d.inch(0, 1), "seams": d.whole(1, 4)})
def allowances_opened(allowance, keep, seams):
    sides = [strip(0, allowance).difference(strip(allowance - keep, allowance + 50)) for _ in range(2 * seams)]
    return sum(side.length for side in sides) if allowance > keep else 0.0


@oracle(letout.left_over, lambda d: {"allowance": d.inch(2, 3), "total": d.inch(0, 4), "seams": d.whole(1, 4)})
def left_beyond(allowance, total, seams):
    moved = panels_narrowed(total, seams)
    return strip(0, allowance).difference(strip(-1, moved)).length


@oracle(letout.wanting, lambda d: {"wanted": d.inch(0, 6), "available": d.inch(0, 6)})
def still_open(wanted, available):
    return strip(0, wanted).difference(strip(0, available)).length if wanted else 0.0


@oracle(letout.inset_cut, lambda d: {"wanting": d.inch(0, 4), "insets": d.whole(1, 4), "allowance": d.inch(0, 1)})
def inset_walked(wanting, insets, allowance):
    return path((allowance, 0), (seam_found(wanting, insets), 0), (allowance, 0)).length


# --- ease


@oracle(ease.ease, lambda d: {"garment": d.inch(20, 50), "body": d.inch(20, 50)})
def ease_in_inches(garment, body):
    return from_inches(decimal_inches(garment) - decimal_inches(body))


@oracle(
    ease.too_big,
    lambda d: {"garment": d.inch(20, 50), "body": d.inch(20, 50), "wanted_ease": d.inch(0, 4)},
)
def too_big_in_inches(garment, body, wanted_ease):
    return from_inches(decimal_inches(garment) - decimal_inches(body) - decimal_inches(wanted_ease))


@oracle(ease.evidence_apart, lambda d: {"pinned": d.inch(0, 4), "measured": d.inch(0, 4)})
def evidence(pinned, measured):
    return Point(pinned, 0).distance(Point(measured, 0))


@oracle(ease.crotch_depth, lambda d: {"hip": d.inch(30, 44)})
def depth_by_hip(hip):
    """NMSU-C209: 1/2 in under 36 of hip, 1 over 38, between them 3/4 (printed 3/5)."""
    steps = [0.5 if decimal_inches(hip) < 36 - 1e-9 else 0.75, 1.0]
    return from_inches(steps[decimal_inches(hip) > 38 + 1e-9])


@oracle(ease.target, lambda d: {"body": d.inch(20, 50), "wanted_ease": d.inch(0, 4)})
def target_found(body, wanted_ease):
    return solve(lambda garment: garment - body, wanted_ease)
