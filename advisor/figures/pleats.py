"""Pleats and tucks: what each takes, the cloth they need, where folds and placement lines lie.

Depth, or underfold, is the width of one hidden layer: a pleat of depth u takes 2u of cloth.
"""

from advisor.figures.exact import need, not_negative, positive
from advisor.figures.formula import Count, Mm, Ratio, formula


@formula("pleats.depth_each", words="{excess} / (2 x {pleats})", source="BALDT", gives="mm")
def depth_each(excess: Mm, pleats: Count) -> Mm:
    """How deep each of `pleats` equal pleats or tucks is folded so that together they take `excess`.

    Millimeters from fold to placement line. FigureError if the excess is negative or there is no pleat.
    Excess over twice the pleats. Worked: excess=2 in, pleats=2 -> 1/2 in. Source BALDT.
    """
    not_negative(excess=excess)
    positive(pleats=pleats)
    return excess / (2 * pleats)


@formula(
    "pleats.needed", words="round up ({excess} / (2 x {most_depth}))", source="common-practice", gives="count"
)
def needed(excess: Mm, most_depth: Mm) -> Count:
    """How many pleats take `excess` when none may be deeper than `most_depth`.

    A count. FigureError if the excess is negative or the depth not more than 0. Rounded up.
    Worked: excess=3 in, most_depth=1/2 in -> 3. Geometry, no source.
    """
    not_negative(excess=excess)
    positive(most_depth=most_depth)
    return -(-excess // (2 * most_depth))


@formula("pleats.knife_multiple", words="1 + 2 x {underfold} / {spacing}", source="WLW", gives="ratio")
def knife_multiple(underfold: Mm, spacing: Mm) -> Ratio:
    """Cloth over finished width for knife pleats whose visible folds stand `spacing` apart.

    A ratio. FigureError if the underfold is negative or the spacing not more than 0.
    1 + 2 x underfold / spacing. Worked: underfold=1 1/2 in, spacing=1 in -> 4. Source WLW.
    """
    not_negative(underfold=underfold)
    positive(spacing=spacing)
    return 1 + 2 * underfold / spacing


@formula(
    "pleats.knife_cloth", words="{finished} x (1 + 2 x {underfold} / {spacing})", source="WLW", gives="mm"
)
def knife_cloth(finished: Mm, underfold: Mm, spacing: Mm) -> Mm:
    """Cloth that knife pleats over a `finished` width need, without end allowances.

    Millimeters. FigureError as for `knife_multiple`, or if the finished width is not more than 0.
    Finished times the multiple. Worked: finished=10 in, underfold=1 in, spacing=1 in -> 30 in. Source WLW.
    """
    positive(finished=finished)
    return finished * knife_multiple(underfold, spacing)


@formula("pleats.touching_cloth", words="3 x {finished}", source="TREADLE", gives="mm")
def touching_cloth(finished: Mm) -> Mm:
    """Cloth for knife pleats that just touch, each hidden fold as deep as the pleat is wide.

    Millimeters. FigureError if the finished width is not more than 0.
    Three times finished. Worked: finished=10 in -> 30 in. Source TREADLE.
    """
    positive(finished=finished)
    return 3 * finished


@formula("pleats.gapped_finished", words="{pleats} x ({width} + {gap})", source="TREADLE", gives="mm")
def gapped_finished(pleats: Count, width: Mm, gap: Mm) -> Mm:
    """Finished width of pleats with plain spaces between them.

    Millimeters. FigureError if there is no pleat, the width is not more than 0 or the gap negative.
    Pleats x (width + gap). Worked: pleats=3, width=1 in, gap=1/2 in -> 4 1/2 in. Source TREADLE.
    """
    positive(pleats=pleats, width=width)
    not_negative(gap=gap)
    return pleats * (width + gap)


@formula("pleats.gapped_cloth", words="{pleats} x (3 x {width} + {gap})", source="TREADLE", gives="mm")
def gapped_cloth(pleats: Count, width: Mm, gap: Mm) -> Mm:
    """Cloth for pleats with plain spaces between them, without end allowances.

    Millimeters. FigureError as for `gapped_finished`. Pleats x (3 widths + gap).
    Worked: pleats=3, width=1 in, gap=1/2 in -> 10 1/2 in. Source TREADLE.
    """
    positive(pleats=pleats, width=width)
    not_negative(gap=gap)
    return pleats * (3 * width + gap)


@formula(
    "pleats.fold_lines",
    words="{first} + (0 to {pleats} - 1) x ({spacing} + 2 x {underfold})",
    source="common-practice",
    gives="mm",
)
def fold_lines(first: Mm, pleats: Count, spacing: Mm, underfold: Mm) -> tuple[Mm, ...]:
    """Where each knife pleat's visible fold lies on the flat cloth; it is laid on its placement line.

    Millimeters from the edge where `first` is measured; the placement line lies 2 x underfold further.
    FigureError if there is no pleat, or the pleats would overlap more than the spacing allows being
    marked (spacing not more than 0). Pitch is the spacing and twice the underfold.
    Worked: first=1 in, pleats=2, spacing=1 in, underfold=1/2 in -> [1 in; 3 in]. Geometry, no source.
    """
    not_negative(first=first)
    positive(pleats=pleats, spacing=spacing, underfold=underfold)
    return tuple(first + place * (spacing + 2 * underfold) for place in range(pleats))


@formula("pleats.placement_line", words="{fold} + 2 x {underfold}", source="common-practice", gives="mm")
def placement_line(fold: Mm, underfold: Mm) -> Mm:
    """Where a pleat's fold is laid, on the flat cloth.

    Millimeters from the same edge as `fold`. FigureError if either is negative.
    Fold + twice the underfold. Worked: fold=1 in, underfold=1/2 in -> 2 in. Geometry, no source.
    """
    not_negative(fold=fold, underfold=underfold)
    return fold + 2 * underfold


@formula("pleats.tucks_extra", words="2 x {depth} x {tucks}", source="BALDT", gives="mm")
def tucks_extra(depth: Mm, tucks: Count) -> Mm:
    """What `tucks` tucks of `depth` shorten the cloth by, and what to allow for them.

    Millimeters. FigureError if the depth is negative or there is no tuck. Twice depth times tucks.
    Worked: depth=1/2 in, tucks=6 -> 6 in. Source BALDT.
    """
    not_negative(depth=depth)
    positive(tucks=tucks)
    return 2 * depth * tucks


@formula("pleats.tuck_layers", words="3 x {depth}", source="AUGUST", gives="mm")
def tuck_layers(depth: Mm) -> Mm:
    """Cloth lying under and in one tuck: the layer seen and the two hidden, each of `depth`.

    Millimeters; three layers is also what the needle meets there. FigureError if negative.
    Three times the depth. Worked: depth=1/2 in -> 1 1/2 in. Source AUGUST.
    """
    not_negative(depth=depth)
    return 3 * depth


@formula("pleats.hidden_room", words="{spacing} - {underfold}", source="common-practice", gives="mm")
def hidden_room(spacing: Mm, underfold: Mm) -> Mm:
    """Room between the hidden end of one pleat and the next fold; pleats deeper than spaced overlap.

    Millimeters. FigureError if they overlap: three layers then turn to five.
    Spacing less underfold. Worked: spacing=1 in, underfold=3/4 in -> 1/4 in. Geometry, no source.
    """
    positive(spacing=spacing)
    not_negative(underfold=underfold)
    need(underfold <= spacing, "the pleats overlap under the cloth", "make them shallower, or fewer")
    return spacing - underfold
