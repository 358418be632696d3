"""Hems: what folds take, where to cut, slanted and circular edges, false hems, usual depths."""

from fractions import Fraction

from advisor.figures.exact import PI, inches, need, not_negative, positive, rounded
from advisor.figures.formula import Count, Mm, Ratio, formula
from advisor.figures.tables import Row, Table, inch_row

CLEAN_FINISH = inches("1/4")
"""What a clean-finished raw edge adds to a single turn. Sources SINGER-HEM and OSU-L87."""
SLEEVE_FOLD = inches("1/2")
"""Fold of a domestic sleeve hem, turned twice: common practice, no source."""
LEG_HEM = (inches("1/2"), inches("1 1/2"))
"""Domestic leg hem of 2 in: turned under, then up. Common practice, no source."""

USUAL_DEPTH = Table(
    "hem depth",
    "finished depth of hem, usual for the garment",
    "mm",
    {
        "straight skirt": (
            inch_row("2 1/2", "2 1/2", "TX-L359", "average"),
            inch_row("2", "3", "ASG-HEM", "A-line or straight"),
        ),
        "gored skirt 60-70 in round": (inch_row("2", "2", "TX-L359"),),
        "moderately flared skirt": (inch_row("2", "3", "OSU-L87", "medium weight"),),
        "sheer straight skirt": (inch_row(None, "4", "OSU-L87"),),
        "heavy skirt": (inch_row(None, "2", "OSU-L87", "wool or cotton"),),
        "flared skirt": (
            inch_row("1 1/2", "1 1/2", "OSU-L87"),
            inch_row("1 1/2", "2", "SINGER-HEM"),
            inch_row("1/4", "3/8", "ASG-HEM", "full or flared"),
        ),
        "circle skirt": (inch_row(None, "1/4", "OSU-L87", "or rolled"),),
        "tucked-in blouse": (inch_row("1/4", "1/2", "ASG-HEM"),),
        "untucked blouse": (inch_row("3/8", "3/4", "ASG-HEM"),),
        "top": (inch_row("3/4", "1 1/4", "ASG-HEM"),),
        "shirt": (inch_row("3/8", "5/8", "ASG-HEM"),),
        "coat": (inch_row("1 1/2", "2", "ASG-HEM"),),
        "jacket": (inch_row("1 1/2", "2", "ASG-HEM"),),
        "dress": (inch_row("1 1/2", "2", "ASG-HEM", "1/2 in if sheer, over 2 in if heavy"),),
        "womens slacks": (
            inch_row("5/8", "1 1/4", "ASG-HEM"),
            Row(Fraction(40), Fraction(40), "GENIE", "4 cm, alterations trade"),
        ),
        "mens trousers": (
            inch_row("2", "2", "ASG-HEM"),
            Row(Fraction(50), Fraction(50), "GENIE", "5 cm, alterations trade"),
        ),
        "shorts": (inch_row("5/8", "1 1/4", "ASG-HEM"),),
    },
)


@formula("hems.single_turn", words="{depth} + {finish}", source="SINGER-HEM", gives="mm")
def single_turn(depth: Mm, finish: Mm) -> Mm:
    """Cloth a hem turned once takes: its depth and what finishing the raw edge takes.

    Millimeters; finish is 0 where the edge is overcast, 1/4 in clean finished. FigureError if depth is
    not more than 0 or finish negative. Depth + finish.
    Worked: depth=2 in, finish=1/4 in -> 2 1/4 in. Source SINGER-HEM.
    """
    positive(depth=depth)
    not_negative(finish=finish)
    return depth + finish


@formula("hems.double_fold", words="2 x {fold}", source="OSU-L87", gives="mm")
def double_fold(fold: Mm) -> Mm:
    """Cloth a hem turned twice by the same amount takes.

    Millimeters. FigureError if the fold is not more than 0. Twice the fold.
    Worked: fold=1/2 in -> 1 in. Source OSU-L87 for 1/4 in twice; 1/2 in at a sleeve is common practice.
    """
    positive(fold=fold)
    return 2 * fold


@formula("hems.two_turns", words="{under} + {depth}", source="TAILSKIRT", gives="mm")
def two_turns(under: Mm, depth: Mm) -> Mm:
    """Cloth a hem takes whose raw edge is turned under by `under` and which is then `depth` deep.

    Millimeters. FigureError if a turn is not more than 0 or the first is deeper than the second.
    Under + depth. Worked: under=1/2 in, depth=1 1/2 in -> 2 in. Source TAILSKIRT (depth and 1/4 in).
    """
    positive(under=under, depth=depth)
    need(under <= depth, "the turn under is deeper than the hem that must cover it", "exchange the two")
    return under + depth


@formula("hems.cut_off", words="{too_long} - {allowance}", source="common-practice", gives="mm")
def cut_off(too_long: Mm, allowance: Mm) -> Mm:
    """How much to cut away, from the finished edge, the old hem left as it is and lost with the strip.

    Millimeters. FigureError if there is less to cut than the new hem needs. Too long - allowance.
    Worked: too_long=3 in, allowance=1 in -> 2 in. Common practice, no source.
    """
    positive(too_long=too_long)
    not_negative(allowance=allowance)
    need(
        too_long >= allowance,
        "cut here, the new hem would lack cloth",
        "let the old hem down first, or turn less",
    )
    return too_long - allowance


@formula(
    "hems.cut_off_opened", words="{too_long} + {old_hem} - {allowance}", source="common-practice", gives="mm"
)
def cut_off_opened(too_long: Mm, old_hem: Mm, allowance: Mm) -> Mm:
    """How much to cut away from the raw edge, the old hem opened and pressed flat.

    Millimeters. FigureError if the opened cloth still lacks the allowance. Too long + old hem - allowance.
    Worked: too_long=1/2 in, old_hem=2 in, allowance=2 in -> 1/2 in. Common practice, no source.
    """
    not_negative(too_long=too_long, old_hem=old_hem, allowance=allowance)
    strip = too_long + old_hem - allowance
    need(strip >= 0, "the opened hem does not hold the new one", "turn less, or face the hem")
    return strip


@formula("hems.keep_edge_fold", words="{too_long} / 2", source="METTLER", gives="mm")
def keep_edge_fold(too_long: Mm) -> Mm:
    """Depth of the fold taken just above an original finished edge that is kept.

    Millimeters, measured from the old hem stitching. FigureError if not more than 0. Half, since a fold
    is double. Worked: too_long=2 in -> 1 in. Source METTLER, which measures to an edge 1/2 in below the stitching.
    """
    positive(too_long=too_long)
    return too_long / 2


@formula("hems.gain", words="{old_hem} - {keep}", source="common-practice", gives="mm")
def gain(old_hem: Mm, keep: Mm) -> Mm:
    """How much longer it gets when a hem is let down and `keep` stays as the new hem or seam.

    Millimeters; what is kept may be a seam to a false hem. FigureError if more is kept than there is.
    Old hem - keep. Worked: old_hem=2 1/2 in, keep=1/2 in -> 2 in. Common practice, no source.
    """
    not_negative(old_hem=old_hem, keep=keep)
    need(keep <= old_hem, "the old hem does not hold so much", "face the hem instead")
    return old_hem - keep


@formula("hems.false_strip", words="2 x {flat_width} + {seam}", source="SENECA", gives="mm")
def false_strip(flat_width: Mm, seam: Mm) -> Mm:
    """Length of the strip that faces a round edge, `flat_width` measured flat, `seam` to join its ends.

    Millimeters; `seam` is both allowances together. FigureError if a part is not more than 0.
    Twice the flat width + seam. Worked: flat_width=10 1/4 in, seam=1/2 in -> 21 in. Source SENECA.
    """
    positive(flat_width=flat_width, seam=seam)
    return 2 * flat_width + seam


@formula("hems.below_old_fold", words="{worn} + {allowance}", source="GENIE", gives="mm")
def below_old_fold(worn: Mm, allowance: Mm) -> Mm:
    """Cloth needed below the old fold to turn a hem clear of a worn or frayed edge.

    Millimeters. FigureError if a part is negative. Worn + allowance.
    Worked: worn=10 mm, allowance=40 mm -> 50 mm. Source GENIE.
    """
    not_negative(worn=worn, allowance=allowance)
    return worn + allowance


@formula("hems.leg_front", words="{opening} / 2 - 3/4 in", source="DPM-HEM", gives="mm")
def leg_front(opening: Mm) -> Mm:
    """Front part of a trouser leg opening, so that the seams hang at the side.

    Millimeters. FigureError if the opening is not over 1 1/2 in. Half, less 3/4 in.
    Worked: opening=16 in -> 7 1/4 in. Source DPM-HEM.
    """
    need(opening > inches("1 1/2"), "the leg opening is too small to be shared so")
    return opening / 2 - inches("3/4")


@formula("hems.leg_back", words="{opening} / 2 + 3/4 in", source="DPM-HEM", gives="mm")
def leg_back(opening: Mm) -> Mm:
    """Back part of a trouser leg opening.

    Millimeters. FigureError if the opening is not over 1 1/2 in. Half, and 3/4 in.
    Worked: opening=16 in -> 8 3/4 in. Source DPM-HEM.
    """
    need(opening > inches("1 1/2"), "the leg opening is too small to be shared so")
    return opening / 2 + inches("3/4")


@formula("hems.slit_allowance", words="{slit} + 1 in", source="HB-PANT", gives="mm")
def slit_allowance(slit: Mm) -> Mm:
    """Hem allowance of trousers with side slits.

    Millimeters. FigureError if the slit is negative. Slit + 1 in. Worked: slit=2 in -> 3 in. Source HB-PANT.
    """
    not_negative(slit=slit)
    return slit + inches("1")


@formula(
    "hems.turn_up_difference", words="2 x {depth} x {change} / {run}", source="common-practice", gives="mm"
)
def turn_up_difference(depth: Mm, change: Mm, run: Mm) -> Mm:
    """How much a turned-up edge differs, round, from the place it meets, where the sides are slanted.

    Millimeters; the garment's round changes by `change` over a length `run` at the hem. On a leg that
    narrows downward the edge is too short by this; on a flare it is too long. Straight sides, a straight
    hem line. FigureError if depth or change is negative or run not more than 0. The edge lies depth below
    the fold, its meeting place depth above it: 2 x depth x change / run.
    Worked: depth=2 in, change=3 in, run=12 in -> 1 in. Geometry, no source.
    """
    not_negative(depth=depth, change=change)
    positive(run=run)
    return 2 * depth * change / run


@formula("hems.mirror_each_edge", words="{difference} / {edges}", source="common-practice", gives="mm")
def mirror_each_edge(difference: Mm, edges: Count) -> Mm:
    """How far each cut edge of the hem allowance moves, at its end, so that the turned-up hem fits.

    Millimeters; two seams are 4 edges. Out on a narrowing leg, in on a flare. FigureError if the
    difference is negative or there is no edge. Difference over edges.
    Worked: difference=1 in, edges=4 -> 1/4 in. Geometry, no source.
    """
    not_negative(difference=difference)
    positive(edges=edges)
    return difference / edges


@formula("hems.circle_excess", words="4 x pi x {depth} x {part}", source="common-practice", gives="mm")
def circle_excess(depth: Mm, part: Ratio) -> Mm:
    """Fullness to ease in when a circular hem is turned up by `depth`, to 1/1000 mm.

    Millimeters, whatever the radius; `part` is 1 for a full circle, 1/2 for half. FigureError if the
    depth is negative or the part not more than 0. The edge lies one depth outside the fold, its meeting
    place one depth inside: 2 pi x twice the depth x part.
    Worked: depth=1/4 in, part=1 -> 79.796 mm. Geometry, no source.
    """
    not_negative(depth=depth)
    positive(part_of_a_circle=part)
    return rounded(4 * PI * depth * part)


@formula("hems.circle_length", words="2 x pi x {radius} x {part}", source="common-practice", gives="mm")
def circle_length(radius: Mm, part: Ratio) -> Mm:
    """Length of a circular hem or waist, to 1/1000 mm.

    Millimeters; `part` as for `circle_excess`. FigureError if either is not more than 0.
    Two pi radius part. Worked: radius=100 mm, part=1/2 -> 314.159 mm. Geometry, no source.
    """
    positive(radius=radius, part_of_a_circle=part)
    return rounded(2 * PI * radius * part)


@formula("hems.circle_radius", words="{length} / (2 x pi x {part})", source="common-practice", gives="mm")
def circle_radius(length: Mm, part: Ratio) -> Mm:
    """Radius at which a circular edge has that length, to 1/1000 mm.

    Millimeters. FigureError if either is not more than 0. Length over two pi part.
    Worked: length=700 mm, part=1 -> 111.408 mm. Geometry, no source.
    """
    positive(length=length, part_of_a_circle=part)
    return rounded(length / (2 * PI * part))
