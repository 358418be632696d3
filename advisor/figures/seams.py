"""Taking in: pinches, shares of an amount over seams, seams that run out, pockets near them.

"Total" is cloth lost all round. "Each side" is measured from the old seam line into one layer.
"""

from fractions import Fraction

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Count, Mm, Ratio, formula
from advisor.figures.tables import Row, Table, inch_row

TAKE_IN_LIMIT = Table(
    "take-in limit",
    "the most a waist is taken in, all round, before seat and pockets go out of place",
    "mm",
    {
        "mens trousers": (
            inch_row(None, "3", "SCL", "at center back; past it a smaller size"),
            Row(Fraction(20), Fraction(40), "BESTSUIT", "2-4 cm, because pockets move"),
        ),
        "jeans": (inch_row("1", "4", "NINEL", "1-3 in is comfortable, 4 in the ceiling"),),
    },
)


@formula("seams.pinch_to_loss", words="2 x {depth} x {places}", source="MICHELLE", gives="mm")
def pinch_to_loss(depth: Mm, places: Count) -> Mm:
    """Cloth that goes when the fold is pinned `depth` deep at each of `places` places.

    Millimeters; a pinch is double cloth. FigureError if the depth is negative or there is no place.
    Twice the depth of the folded pinch, times the places. Worked: depth=1/2 in, places=2 -> 2 in.
    Source MICHELLE (1 in deep at two sides is 4 in).
    """
    not_negative(depth=depth)
    positive(places=places)
    return 2 * depth * places


@formula("seams.pinch_for", words="{total} / (2 x {places})", source="MICHELLE", gives="mm")
def pinch_for(total: Mm, places: Count) -> Mm:
    """How deep to pin each of `places` equal pinches so that `total` goes.

    Millimeters. FigureError if the total is negative or there is no place.
    Total over twice the places. Worked: total=2 in, places=2 -> 1/2 in. Source MICHELLE.
    """
    not_negative(total=total)
    positive(places=places)
    return total / (2 * places)


@formula("seams.each", words="{total} / {seams}", source="IKAT", gives="mm")
def each(total: Mm, seams: Count) -> Mm:
    """What one of `seams` equal seams takes of `total`.

    Millimeters. FigureError if the total is negative or there is no seam.
    Total over the seams. Worked: total=1 in, seams=2 -> 1/2 in. Source IKAT (two side seams).
    """
    not_negative(total=total)
    positive(seams=seams)
    return total / seams


@formula("seams.each_side", words="{total} / 2", source="THEISM", gives="mm")
def each_side(total: Mm) -> Mm:
    """How far the new line lies from the old one, on each side of one seam that takes `total`.

    Millimeters. FigureError if the total is negative.
    Half the total. Worked: total=1 in -> 1/2 in. Source THEISM (center back of trousers).
    """
    not_negative(total=total)
    return total / 2


@formula("seams.per_layer", words="{total} / (2 x {seams})", source="IKAT", gives="mm")
def per_layer(total: Mm, seams: Count) -> Mm:
    """How far each layer's edge moves when `total` is shared by `seams` equal seams of two layers.

    Millimeters. FigureError if the total is negative or there is no seam.
    Total over twice the seams. Worked: total=1 in, seams=2 -> 1/4 in. Source IKAT.
    """
    not_negative(total=total)
    positive(seams=seams)
    return total / (2 * seams)


@formula("seams.by_shares", words="{total} shared as {shares}", source="CUTTER98", gives="mm")
def by_shares(total: Mm, shares: tuple[Ratio, ...]) -> tuple[Mm, ...]:
    """`total` shared unevenly, in the order and proportion of `shares`, closing exactly.

    Millimeters, one for each share. FigureError if a share is negative or all are nothing.
    Total x share / sum of shares. Worked: total=1 in, shares=[1; 2; 2] -> [1/5 in; 2/5 in; 2/5 in].
    Source CUTTER98 (a coat breast: back, chest, under arm).
    """
    not_negative(total=total)
    need(
        bool(shares) and min(shares) >= 0 and sum(shares) > 0, "the shares do not add up to more than nothing"
    )
    whole = sum(shares)
    return tuple(total * share / whole for share in shares)


@formula(
    "seams.in_order",
    words="{total} put into places in order, each up to its own limit {caps}",
    source="common-practice",
    gives="mm",
)
def in_order(total: Mm, caps: tuple[Mm, ...]) -> tuple[Mm, ...]:
    """`total` filled into places in order of preference, none past its cap, closing exactly.

    Millimeters, one for each cap. FigureError if a cap is negative or all together hold too little.
    Each place takes the smaller of its cap and what is left.
    Worked: total=3 in, caps=[2 in; 2 in; 2 in] -> [2 in; 1 in; 0 in]. Common practice, no source.
    """
    _room(total, caps)
    left, shares = total, []
    for cap in caps:
        shares.append(min(cap, left))
        left -= shares[-1]
    return tuple(shares)


@formula(
    "seams.evenly",
    words="{total} shared alike, no place past its own limit {caps}",
    source="common-practice",
    gives="mm",
)
def evenly(total: Mm, caps: tuple[Mm, ...]) -> tuple[Mm, ...]:
    """`total` shared as alike as the caps allow, closing exactly; what a full place cannot hold moves on.

    Millimeters, one for each cap, in the caps' order. FigureError as for `in_order`.
    The smallest cap first: each takes the smaller of its cap and an equal part of what is left.
    Worked: total=3 in, caps=[1/2 in; 2 in; 2 in] -> [1/2 in; 5/4 in; 5/4 in]. Common practice, no source.
    """
    _room(total, caps)
    left, shares = total, dict.fromkeys(range(len(caps)), total * 0)
    for done, place in enumerate(sorted(shares, key=lambda place: caps[place])):
        shares[place] = min(caps[place], left / (len(caps) - done))
        left -= shares[place]
    return tuple(shares.values())


def _room(total: Mm, caps: tuple[Mm, ...]) -> None:
    not_negative(total=total)
    need(all(cap >= 0 for cap in caps), "a limit cannot be less than 0")
    need(
        sum(caps) >= total,
        "the places together cannot take the amount",
        "add a place, or leave a remainder open",
    )


@formula(
    "seams.over_limit", words="the larger of (0, {total} - {limit})", source="common-practice", gives="mm"
)
def over_limit(total: Mm, limit: Mm) -> Mm:
    """How much of `total` lies past `limit`; 0 says that it is within it.

    Millimeters. FigureError if either is negative. Common practice, no source (a comparison).
    Total less limit, never below 0. Worked: total=3 1/2 in, limit=3 in -> 1/2 in.
    """
    not_negative(total=total, limit=limit)
    return max(total - limit, total * 0)


@formula(
    "seams.loss_at",
    words="{total} x the larger of (0, 1 - {depth} / {length})",
    source="common-practice",
    gives="mm",
)
def loss_at(total: Mm, depth: Mm, length: Mm) -> Mm:
    """What a seam taking `total` at the top takes at `depth`, when it runs out to nothing at `length`.

    Millimeters down from the top; below the end it takes 0. FigureError if total or depth is negative
    or the length is not more than 0. Similar triangles: total x (1 - depth / length).
    Worked: total=2 in, depth=4 in, length=8 in -> 1 in. Common practice, no source.
    """
    not_negative(total=total, depth=depth)
    positive(length=length)
    return max(total * (1 - depth / length), total * 0)


@formula("seams.bears_at", words="{spare} / (1 - {depth} / {length})", source="common-practice", gives="mm")
def bears_at(spare: Mm, depth: Mm, length: Mm) -> Mm:
    """The most a seam may take at the top and yet no more than `spare` at `depth`, running out at `length`.

    Millimeters. FigureError if spare or depth is negative, or the seam has run out by `depth`: then nothing
    there bounds it. Similar triangles, `loss_at` turned round. Worked: spare=1 in, depth=4 in, length=8 in -> 2 in.
    Common practice, no source.
    """
    not_negative(spare=spare, depth=depth)
    need(depth < length, "the seam has run out above that level", "there it takes nothing, so nothing there bounds it")
    return spare / (1 - depth / length)


@formula(
    "seams.pocket_gap_left",
    words="{gap} - {total} x the larger of (0, 1 - {depth} / {length})",
    source="common-practice",
    gives="mm",
)
def pocket_gap_left(gap: Mm, total: Mm, depth: Mm, length: Mm) -> Mm:
    """How far apart two back pockets stay when the seam between them is taken in and runs out.

    Millimeters; `depth` is from the top down to the pockets' upper corners. FigureError if the pockets
    would meet, and as for `loss_at`. The gap less the loss at pocket level.
    Worked: gap=3 in, total=2 in, depth=4 in, length=8 in -> 2 in. Common practice, no source.
    """
    positive(gap=gap)
    left = gap - loss_at(total, depth, length)
    need(left > 0, "the pockets would meet", "take less here and put the rest into darts or side seams")
    return left


@formula("seams.pocket_edge_to_seam", words="{gap_left} / 2", source="common-practice", gives="mm")
def pocket_edge_to_seam(gap_left: Mm) -> Mm:
    """From the edge of a back pocket to the new center seam, pockets symmetrical about it.

    Millimeters; 1 in is the floor, 3/4 in the very least. FigureError if the gap is not more than 0.
    Half the gap. Worked: gap_left=2 in -> 1 in. Common practice, no source.
    """
    positive(gap_left=gap_left)
    return gap_left / 2


POCKET_EDGE_FLOOR = inches("1")
"""From a pocket's edge to a new seam: common practice, no source; JSTERN sets new pockets 1 1/2 in off or more."""
POCKETS_APART = 2 * POCKET_EDGE_FLOOR
"""From pocket to pocket, with a new seam in the middle."""
POCKET_EDGE_LEAST = inches("3/4")
"""At the very least: common practice, no source."""


@formula("seams.shortest_run_out", words="10 x {each_side}", source="common-practice", gives="mm")
def shortest_run_out(each_side: Mm) -> Mm:
    """The least length in which a line `each_side` deep may run out; shorter shows a dent.

    Millimeters. FigureError if the depth is negative. 5 in for every 1/2 in of depth.
    Worked: each_side=1/2 in -> 5 in. Common practice, no source.
    """
    not_negative(depth=each_side)
    return 10 * each_side
