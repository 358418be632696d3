"""Concealed button plackets, facings, pocket flaps: strips as finished and as cut, and what folds clear."""

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Mm, formula

FLAP_PLACED = inches("3/8")
"""From a pocket mouth to the raw edge of a flap laid above it: common practice, no source."""
FLAP_SEWN = inches("1/8")
"""From that raw edge to the first line: common practice, no source."""
FLAP_TOPSTITCHED = inches("1/4")
"""From the fold down to the second line: common practice, no source."""


@formula("plackets.strip_finished", words="2 x {overlap}", source="common-practice", gives="mm")
def strip_finished(overlap: Mm) -> Mm:
    """Width of a concealed placket strip laid out flat, before any seam allowance: never a cutting width.

    Millimeters. FigureError if the overlap is not more than 0. Twice the overlap, which it lines twice.
    Worked: overlap=1 1/2 in -> 3 in. Common practice, no source.
    """
    positive(overlap=overlap)
    return 2 * overlap


@formula("plackets.strip_cut", words="2 x ({overlap} + {allowance})", source="common-practice", gives="mm")
def strip_cut(overlap: Mm, allowance: Mm) -> Mm:
    """Width to cut that strip, folded along its middle, both raw edges in one seam.

    Millimeters. Cut at the finished width it would come out narrower by one allowance. FigureError if
    the overlap is not more than 0 or the allowance negative. Twice (overlap + allowance).
    Worked: overlap=1 1/2 in, allowance=1/2 in -> 4 in. Common practice, no source.
    """
    positive(overlap=overlap)
    not_negative(allowance=allowance)
    return 2 * (overlap + allowance)


@formula("plackets.strip_length", words="{opening} + {top} + {bottom}", source="common-practice", gives="mm")
def strip_length(opening: Mm, top: Mm, bottom: Mm) -> Mm:
    """Length to cut a placket strip or facing: the opening and an allowance at each end.

    Millimeters. FigureError if the opening is not more than 0 or an allowance negative.
    Opening + top + bottom. Worked: opening=20 in, top=1/2 in, bottom=1 in -> 21 1/2 in.
    Common practice, no source.
    """
    positive(opening=opening)
    not_negative(top=top, bottom=bottom)
    return opening + top + bottom


@formula("plackets.overlap_if_cut", words="{width} / 2 - {allowance}", source="common-practice", gives="mm")
def overlap_if_cut(width: Mm, allowance: Mm) -> Mm:
    """The overlap a strip already cut to `width` will give: to check before sewing.

    Millimeters. FigureError if the allowances eat the strip. Half the width - allowance.
    Worked: width=3 in, allowance=1/2 in -> 1 in. Geometry, no source.
    """
    positive(width=width)
    not_negative(allowance=allowance)
    need(width > 2 * allowance, "the seam allowances would use up the strip", "cut it wider")
    return width / 2 - allowance


@formula(
    "plackets.facing_cut", words="{finished} + {allowance} + {finish}", source="common-practice", gives="mm"
)
def facing_cut(finished: Mm, allowance: Mm, finish: Mm) -> Mm:
    """Width to cut a facing: what is seen inside, the seam, and what finishing its free edge takes.

    Millimeters. FigureError if the finished width is not more than 0 or another part negative.
    Finished + allowance + finish.
    Worked: finished=2 in, allowance=1/2 in, finish=1/4 in -> 2 3/4 in. Common practice, no source.
    """
    positive(finished=finished)
    not_negative(allowance=allowance, finish=finish)
    return finished + allowance + finish


@formula("plackets.flap_fold_above", words="{placed} + {sewn}", source="common-practice", gives="mm")
def flap_fold_above(placed: Mm, sewn: Mm) -> Mm:
    """How far above the pocket mouth a flap's fold comes.

    Millimeters. The flap lies face down, pointing up, its raw edge `placed` above the mouth, is sewn
    `sewn` from that edge and folded down over the line. FigureError if either is negative.
    Placed + sewn. Worked: placed=3/8 in, sewn=1/8 in -> 1/2 in. Common practice, no source.
    """
    not_negative(placed=placed, sewn=sewn)
    return placed + sewn


@formula(
    "plackets.flap_clears_mouth",
    words="{placed} + {sewn} - {topstitched}",
    source="common-practice",
    gives="mm",
)
def flap_clears_mouth(placed: Mm, sewn: Mm, topstitched: Mm) -> Mm:
    """How far above the mouth the flap's second line runs: more than 0, or the pocket is sewn shut.

    Millimeters; `topstitched` is from the fold down. FigureError if it would not clear the mouth.
    Fold above the mouth - topstitching. Worked: placed=3/8 in, sewn=1/8 in, topstitched=1/4 in -> 1/4 in.
    Common practice, no source.
    """
    not_negative(topstitched=topstitched)
    clear = flap_fold_above(placed, sewn) - topstitched
    need(
        clear > 0,
        "the topstitching would close the pocket mouth",
        "place the flap higher or stitch nearer its fold",
    )
    return clear


@formula("plackets.flap_edge_covered", words="{topstitched} - {sewn}", source="common-practice", gives="mm")
def flap_edge_covered(sewn: Mm, topstitched: Mm) -> Mm:
    """How far past the flap's raw edge the second line runs: more than 0, or the edge frays out below it.

    Millimeters. FigureError if the edge is not caught. Topstitching - first line, both from the fold.
    Worked: sewn=1/8 in, topstitched=1/4 in -> 1/8 in. Common practice, no source.
    """
    not_negative(sewn=sewn)
    need(
        topstitched > sewn,
        "the raw edge of the flap is not caught",
        "stitch further from the fold, or trim the edge",
    )
    return topstitched - sewn
