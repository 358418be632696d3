"""Elastic: cut length, casing, and whether the closed round still passes the body."""

from fractions import Fraction

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Mm, Ratio, formula

CUT_SHARE = (Fraction(85, 100), Fraction(90, 100))
"""Elastic over the finished length it sits in. From memory."""
PASS_EASE = inches("1")
"""A stretched opening passes the body with this to spare: common practice, no source."""


@formula("elastic.cut", words="{finished} x {share} + {join}", source="from-memory", gives="mm")
def cut(finished: Mm, share: Ratio, join: Mm) -> Mm:
    """Length to cut elastic for the finished length it sits in.

    Millimeters; share is 85 to 90 percent, `join` what both ends use in overlap or seams. FigureError if
    the finished length is not more than 0, the share not above 0 up to 1, or the join negative.
    Finished x share + join. Worked: finished=12 in, share=9/10, join=1 in -> 59/5 in. From memory.
    """
    positive(finished=finished)
    not_negative(join=join)
    need(
        0 < share <= 1, "the share of elastic must be above 0 and no more than 1", "85 to 90 percent is usual"
    )
    return finished * share + join


@formula(
    "elastic.casing_cut", words="{elastic} + {room} + {turn_under}", source="APQ-CAS", gives="mm"
)
def casing_cut(elastic: Mm, room: Mm, turn_under: Mm) -> Mm:
    """Depth of cloth a casing folded over takes past its fold: elastic, room to thread it, the turn.

    Millimeters; room is 1/8 (ASDP-CAS) to 1/4 in (APQ-CAS). FigureError if the elastic's width is not
    more than 0 or another part negative. Elastic + room + turn under.
    Worked: elastic=3/4 in, room=1/8 in, turn_under=1/4 in -> 9/8 in. Source APQ-CAS.
    """
    positive(elastic=elastic)
    not_negative(room=room, turn_under=turn_under)
    return elastic + room + turn_under


@formula("elastic.back_finished", words="{back} - {loss}", source="MSMOM", gives="mm")
def back_finished(back: Mm, loss: Mm) -> Mm:
    """Finished width of a back that a casing draws up by `loss`: what the elastic is reckoned from.

    Millimeters from side seam to side seam. FigureError if nothing would be left.
    Back less loss. Worked: back=17 in, loss=2 in -> 15 in. Source MSMOM, which cuts the elastic to just that.
    """
    positive(back=back)
    not_negative(loss=loss)
    need(loss < back, "nothing of the back would be left", "take part of it in at the seams")
    return back - loss


@formula(
    "elastic.stretched",
    words="the smaller of ({cloth_round}, {rest_round} x {stretch})",
    source="common-practice",
    gives="mm",
)
def stretched(cloth_round: Mm, rest_round: Mm, stretch: Ratio) -> Mm:
    """How far a closed round opens: as the elastic lets it, never past the cloth laid flat.

    Millimeters; `rest_round` is the elastic closed at rest, `stretch` how many times that it pulls to.
    FigureError if a round is not more than 0 or the stretch under 1. The smaller of the two.
    Worked: cloth_round=40 in, rest_round=26 in, stretch=3/2 -> 39 in. Geometry, no source.
    """
    positive(cloth_round=cloth_round, rest_round=rest_round)
    need(stretch >= 1, "elastic cannot pull to less than its own length")
    return min(cloth_round, rest_round * stretch)


@formula("elastic.opening_needed", words="{part} + 1 in", source="common-practice", gives="mm")
def opening_needed(part: Mm) -> Mm:
    """How far a closed waist, neck or cuff must open to pass the widest part on its way.

    Millimeters; hip for a step-in waist, shoulders or head otherwise. FigureError if the part is not
    more than 0. Part + 1 in. Worked: part=38 in -> 39 in. Common practice, no source.
    """
    positive(body_part=part)
    return part + PASS_EASE


@formula("elastic.pass_margin", words="{stretched} - {part} - 1 in", source="common-practice", gives="mm")
def pass_margin(stretched: Mm, part: Mm) -> Mm:
    """What is to spare when the stretched opening passes; below 0 it needs a placket or a zipper.

    Millimeters, may be negative. FigureError if one is not more than 0. Stretched - part - 1 in.
    Worked: stretched=40 in, part=38 in -> 1 in. Common practice, no source.
    """
    positive(stretched=stretched, body_part=part)
    return stretched - part - PASS_EASE
