"""Darts: intake, legs, how much a length bears, how many, where they stand, how they close.

Intake has one meaning here: cloth taken off the edge the dart opens on, so the stitching lies half
of it from the fold.
"""

from fractions import Fraction

from advisor.figures.exact import inches, need, not_negative, pick, positive, root, turned_degrees
from advisor.figures.formula import Count, Degrees, Mm, Ratio, Word, formula
from advisor.figures.tables import Table, inch_row

MOST_INTAKE = inches("1")
"""The most one dart takes, exactly this still allowed. Source NAOMI: 2 in to two darts, more to four."""
LONGEST = inches("7")
"""Longest dart for general use. Source TIE3-32."""
SPLIT_APART = inches("2")
"""Sewn darts of a split pair stay about this far apart. Source POWER."""
ABOVE_POCKET = inches("1/2")
"""A dart ends this far above a pocket mouth: common practice, no source."""

INTAKE_TO_LENGTH: dict[str, Fraction] = {
    "wool": Fraction(1, 3),
    "crisp": Fraction(1, 5),
    "other": Fraction(1, 4),
}
"""Intake a dart bears without a pucker, as a share of its length, by cloth. From memory."""

STOPS_SHORT = Table(
    "dart stops short",
    "how far the point stays from the fullest place it points to",
    "mm",
    {
        "front waist": (
            inch_row("1/2", "1/2", "PM-DART", "below bust height"),
            inch_row("1", "1", "from-memory", "1/2 in is too near for most"),
        ),
        "front waist, larger cup": (inch_row("1 1/2", "2", "from-memory"),),
        "back waist": (inch_row("1", "1", "PM-DART", "below shoulder-blade height"),),
        "underarm": (
            inch_row("2", None, "PM-DART", "from the bust point"),
            inch_row("1", "2", "AFASH", "any bust dart"),
        ),
        "skirt back": (
            inch_row("3/4", "1", "MOTLEY", "above the fullest hip"),
            inch_row("1", "2", "ZARO", "above the fullest seat"),
        ),
    },
)

SKIRT_SHARE: dict[str, Fraction] = {
    "side": Fraction(13, 100),
    "front": Fraction(8, 100),
    "back": Fraction(16, 100),
}
"""Share of hip less waist for each of 4 side curves, 2 front and 2 back darts. Source PATSTUDIO."""


@formula("darts.fold_to_stitch", words="{intake} / 2", source="common-practice", gives="mm")
def fold_to_stitch(intake: Mm) -> Mm:
    """From the fold of the dart to its stitching, at the edge it opens on.

    Millimeters. FigureError if the intake is negative. Half the intake. Worked: intake=1 in -> 1/2 in.
    Common practice, no source (geometry of a fold).
    """
    not_negative(intake=intake)
    return intake / 2


@formula(
    "darts.leg_length",
    words="square root of ({length} squared + ({intake} / 2) squared)",
    source="common-practice",
    gives="mm",
)
def leg_length(intake: Mm, length: Mm) -> Mm:
    """Length of one straight leg, along the stitching, to 1/1000 mm.

    Millimeters. FigureError if the intake is negative or the length not more than 0. Right triangle of
    half the intake and the length. Worked: intake=60 mm, length=40 mm -> 50 mm. Geometry, no source.
    """
    not_negative(intake=intake)
    positive(length=length)
    return root(length**2 + (intake / 2) ** 2)


@formula("darts.take_up_at", words="{intake} x {from_point} / {length}", source="common-practice", gives="mm")
def take_up_at(intake: Mm, from_point: Mm, length: Mm) -> Mm:
    """What a straight dart takes at `from_point` up from its point.

    Millimeters. FigureError if the place is not on the dart. Similar triangles.
    Worked: intake=1 in, from_point=2 in, length=4 in -> 1/2 in. Geometry, no source.
    """
    not_negative(intake=intake, from_point=from_point)
    positive(length=length)
    need(from_point <= length, "the place asked about lies past the wide end of the dart")
    return intake * from_point / length


@formula(
    "darts.most_for_length",
    words="{length} x the share {cloth} cloth bears",
    source="from-memory",
    gives="mm",
)
def most_for_length(length: Mm, cloth: Word) -> Mm:
    """The most intake a dart of `length` bears before its point puckers, in that cloth.

    Millimeters; cloth is wool (1:3), crisp (1:5, cotton or polyester) or other (1:4, safe in most).
    FigureError for another word or a length not more than 0. Length times the share.
    Worked: length=2 1/2 in, cloth=other -> 5/8 in. From memory.
    """
    positive(length=length)
    return length * pick(cloth, INTAKE_TO_LENGTH, "kind of cloth for darts")


@formula(
    "darts.most_each",
    words="the smaller of (1 in, what {length} bears in {cloth} cloth)",
    source="common-practice",
    gives="mm",
)
def most_each(length: Mm, cloth: Word) -> Mm:
    """The most one dart takes: its length's limit, and never past 1 in; exactly 1 in is allowed.

    Millimeters. FigureError as for `most_for_length`.
    Worked: length=6 in, cloth=other -> 1 in. Common practice, no source; the shares from memory.
    """
    return min(MOST_INTAKE, most_for_length(length, cloth))


@formula(
    "darts.length_needed", words="{intake} / the share {cloth} cloth bears", source="from-memory", gives="mm"
)
def length_needed(intake: Mm, cloth: Word) -> Mm:
    """The shortest dart that bears `intake` without a pucker, in that cloth.

    Millimeters; cloth as for `most_for_length`. FigureError for another word or a negative intake.
    Intake over the share. Worked: intake=1 in, cloth=other -> 4 in. From memory.
    """
    not_negative(intake=intake)
    return intake / pick(cloth, INTAKE_TO_LENGTH, "kind of cloth for darts")


@formula("darts.needed", words="round up ({total} / {most_each})", source="common-practice", gives="count")
def needed(total: Mm, most_each: Mm) -> Count:
    """How many darts `total` needs when none may take more than `most_each`.

    A count; a total of exactly the limit needs one. FigureError if the total is negative or the limit
    not more than 0. Worked: total=2 in, most_each=1 in -> 2. Common practice, no source.
    """
    not_negative(total=total)
    positive(most_each=most_each)
    return -(-total // most_each)


@formula(
    "darts.needed_in_pairs",
    words="2 x round up ({total} / (2 x {most_each}))",
    source="NAOMI",
    gives="count",
)
def needed_in_pairs(total: Mm, most_each: Mm) -> Count:
    """How many darts, standing in pairs about the center line, `total` needs.

    An even count. FigureError as for `needed`. Twice the pairs, a pair holding twice the limit.
    Worked: total=2 in, most_each=1 in -> 2. Source NAOMI (two to 2 in, four past it).
    """
    not_negative(total=total)
    positive(most_each=most_each)
    return 2 * -(-total // (2 * most_each))


@formula("darts.intake_each", words="{total} / {darts}", source="NAOMI", gives="mm")
def intake_each(total: Mm, darts: Count) -> Mm:
    """What each of `darts` equal darts takes of `total`.

    Millimeters. FigureError if the total is negative or there is no dart. Total over darts.
    Worked: total=2 in, darts=2 -> 1 in. Source NAOMI.
    """
    not_negative(total=total)
    positive(darts=darts)
    return total / darts


@formula(
    "darts.from_center",
    words="{quarter} x (1 to {pairs}) / ({pairs} + 1)",
    source="common-practice",
    gives="mm",
)
def from_center(quarter: Mm, pairs: Count) -> tuple[Mm, ...]:
    """Where the middle of each dart stands, from the center line out, on each half.

    Millimeters, one for each pair, before any dart is sewn; `quarter` runs from the center line to the
    side seam. FigureError if it is not more than 0 or there is no pair. Equal parts of the quarter.
    Worked: quarter=9 in, pairs=2 -> [3 in; 6 in]. Common practice, no source.
    """
    positive(quarter=quarter, pairs=pairs)
    return tuple(quarter * place / (pairs + 1) for place in range(1, pairs + 1))


@formula(
    "darts.cloth_between", words="{apart} - ({first} + {second}) / 2", source="common-practice", gives="mm"
)
def cloth_between(apart: Mm, first: Mm, second: Mm) -> Mm:
    """Cloth left between the near legs of two darts whose middles stand `apart`, at the wide end.

    Millimeters; `first` and `second` are intakes. FigureError if the darts would overlap.
    Distance less half of each intake. Worked: apart=3 in, first=1 in, second=1 in -> 2 in. Geometry.
    """
    not_negative(first=first, second=second)
    left = apart - (first + second) / 2
    need(left >= 0, "the darts would overlap", "set them further apart, or give them less each")
    return left


@formula(
    "darts.longest_above_pocket", words="{waist_to_mouth} - 1/2 in", source="common-practice", gives="mm"
)
def longest_above_pocket(waist_to_mouth: Mm) -> Mm:
    """The longest dart that still ends 1/2 in above a pocket mouth.

    Millimeters from the waist. FigureError if there is no such room.
    Distance less 1/2 in. Worked: waist_to_mouth=3 in -> 2 1/2 in. Common practice, no source.
    """
    need(waist_to_mouth > ABOVE_POCKET, "no room for a dart above the pocket", "use the side seams instead")
    return waist_to_mouth - ABOVE_POCKET


@formula("darts.past_longest", words="the larger of (0, {length} - 7 in)", source="TIE3-32", gives="mm")
def past_longest(length: Mm) -> Mm:
    """How much longer than the longest ordinary dart this one is; 0 says that it is within it.

    Millimeters; darts pointed at both ends in one-piece garments are longer in practice. FigureError
    if the length is not more than 0. Length less 7 in. Worked: length=8 in -> 1 in. Source TIE3-32.
    """
    positive(length=length)
    return max(length - LONGEST, length * 0)


@formula("darts.rejoin_at", words="{length} x 2 / 3", source="POWER", gives="mm")
def rejoin_at(length: Mm) -> Mm:
    """How far down from the waist the redrawn legs of a deepened dart meet the old ones.

    Millimeters. FigureError if the length is not more than 0. Two thirds of the length.
    Worked: length=6 in -> 4 in. Source POWER.
    """
    positive(length=length)
    return length * 2 / 3


@formula("darts.skirt_share", words="{excess} x the share of one {place}", source="PATSTUDIO", gives="mm")
def skirt_share(excess: Mm, place: Word) -> Mm:
    """What one side curve, front dart or back dart of a skirt takes of hip less waist.

    Millimeters; place is side, front or back, of which there are 4, 2 and 2. FigureError for another
    word. 13, 8 or 16 percent. Worked: excess=8 in, place=back -> 32/25 in. Source PATSTUDIO.
    """
    not_negative(excess=excess)
    return excess * pick(place, SKIRT_SHARE, "place in a skirt")


@formula(
    "darts.closing_angle",
    words="2 x the angle whose tangent is ({intake} / 2) / {length}",
    source="common-practice",
    gives="degrees",
)
def closing_angle(intake: Mm, length: Mm) -> Degrees:
    """The angle one leg turns about the point until it lies on the other: to true the edge, turn by this.

    Degrees, to 1/1000. FigureError if the intake is negative or the length not more than 0.
    Worked: intake=2 in, length=1 in -> 90 degrees. Geometry, no source.
    """
    not_negative(intake=intake)
    positive(length=length)
    return turned_degrees(intake / (2 * length), times=2)


@formula(
    "darts.fold_rise",
    words="2 x {length} x {intake} squared / (4 x {length} squared - {intake} squared)",
    source="common-practice",
    gives="mm",
)
def fold_rise(intake: Mm, length: Mm) -> Mm:
    """How far a straight edge must rise at the fold, so that the dart pressed to one side fills its seam.

    Millimeters beyond the edge drawn straight across. FigureError if the intake is negative or not less
    than twice the length. The fold, laid on the neighboring cloth, is followed to that cloth's edge.
    Worked: intake=2 in, length=3 in -> 3/4 in. Geometry, no source.
    """
    not_negative(intake=intake)
    positive(length=length)
    need(
        intake < 2 * length,
        "the dart is wider than it is long twice over",
        "spread the intake over more darts",
    )
    return 2 * length * intake**2 / (4 * length**2 - intake**2)


@formula("darts.slope", words="{intake} / {length}", source="common-practice", gives="ratio")
def slope(intake: Mm, length: Mm) -> Ratio:
    """Intake as a share of length, what decides whether a point puckers.

    A ratio, beside `INTAKE_TO_LENGTH`. FigureError if the intake is negative or the length not more
    than 0. Worked: intake=1 in, length=4 in -> 1/4. Common practice, no source.
    """
    not_negative(intake=intake)
    positive(length=length)
    return intake / length
