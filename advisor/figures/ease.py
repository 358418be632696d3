"""Ease: garment less body. Published ranges, what is too much, what a body measure is worth."""

from advisor.figures.exact import inches, not_negative, positive
from advisor.figures.formula import Mm, formula
from advisor.figures.tables import Table, inch_row

USUAL = Table(
    "ease",
    "garment less body, in woven cloth that does not stretch",
    "mm",
    {
        "bust": (inch_row("1 1/2", "2", "CWU16"),),
        "dress waist": (inch_row("3/4", "1", "CWU16"),),
        "skirt or trouser waist": (
            inch_row("1/2", "3/4", "CWU16", "women; men's trousers 3/4-1 in in the same text"),
            inch_row(None, "1", "NMSU-C209"),
        ),
        "jeans waist": (inch_row("0", "1/4", "from-memory", "rigid denim, after a wash"),),
        "hip": (inch_row("2", "2 3/4", "CWU16", "all garments"),),
        "mens fitted shirt chest": (inch_row("1 1/2", "2 1/2", "CWU16"),),
        "mens classic shirt chest": (inch_row(None, "3", "CWU16"),),
        "mens trouser seat": (inch_row("1 1/2", "2", "CWU16"),),
        "mens trouser thigh": (inch_row("1", None, "CWU16"),),
        "trouser hip": (
            inch_row("2", "4", "NMSU-C209", "at least 2-4 in"),
            inch_row("2", "2 3/4", "CWU16"),
        ),
        "trouser abdomen": (inch_row(None, "2", "NMSU-C209"),),
        "trouser knee": (inch_row("1", None, "NMSU-C209"),),
        "jacket over blouse": (inch_row("2", "4", "DPM-EASE", "2 in over one layer, 4 over several"),),
        "fitted skirt hip": (inch_row("1", "2", "MOTLEY"),),
        "semi-fitted skirt hip": (inch_row("2", "3", "MOTLEY"),),
        "relaxed skirt hip": (inch_row("3", "5", "MOTLEY"),),
        "upper arm": (inch_row("2", "2", "from-memory", "woven"),),
    },
)

READING_ERROR = {"alone": inches("1/2"), "helped": inches("1/4")}
"""How far a girth read on a body may be out, alone before a mirror or with help. From memory."""


@formula("ease.ease", words="{garment} - {body}", source="common-practice", gives="mm")
def ease(garment: Mm, body: Mm) -> Mm:
    """Ease at a place: garment less body.

    Millimeters, negative where the garment is the smaller. FigureError if one is not more than 0.
    Garment - body. Worked: garment=37 3/4 in, body=31 1/2 in -> 6 1/4 in. By definition.
    """
    positive(garment=garment, body=body)
    return garment - body


@formula("ease.too_big", words="{garment} - {body} - {wanted_ease}", source="common-practice", gives="mm")
def too_big(garment: Mm, body: Mm, wanted_ease: Mm) -> Mm:
    """What a place has over the body and its wanted ease; below 0 it is too small by that.

    Millimeters, either sign; wanted ease may be negative in stretch cloth. FigureError if a measure is
    not more than 0. Garment - body - wanted ease.
    Worked: garment=34 in, body=31 in, wanted_ease=1 in -> 2 in. By definition.
    """
    positive(garment=garment, body=body)
    return garment - body - wanted_ease


@formula(
    "ease.evidence_apart", words="the size of ({pinned} - {measured})", source="common-practice", gives="mm"
)
def evidence_apart(pinned: Mm, measured: Mm) -> Mm:
    """How far a pinned amount and a measured one disagree; past READING_ERROR ask again, never average.

    Millimeters, 0 or more; both as cloth lost all round. The difference without its sign.
    Worked: pinned=2 in, measured=1 1/2 in -> 1/2 in. Common practice, no source.
    """
    return abs(pinned - measured)


@formula("ease.crotch_depth", words="1/2, 3/4 or 1 in by a hip of {hip}", source="NMSU-C209", gives="mm")
def crotch_depth(hip: Mm) -> Mm:
    """Ease added to the seated crotch depth, by hip.

    Millimeters: 1/2 in under 36 in of hip, 1 in over 38, 3/4 from 36 to 38 (the scan of the source prints
    3/5 there, read as 3/4). FigureError if the hip is not more than 0.
    Worked: hip=37 in -> 3/4 in. Source NMSU-C209.
    """
    positive(hip=hip)
    if hip < inches("36"):
        return inches("1/2")
    return inches("1") if hip > inches("38") else inches("3/4")


@formula("ease.target", words="{body} + {wanted_ease}", source="common-practice", gives="mm")
def target(body: Mm, wanted_ease: Mm) -> Mm:
    """What a garment should measure at a place.

    Millimeters. FigureError if the body is not more than 0 or the ease eats it up.
    Body + wanted ease. Worked: body=31 in, wanted_ease=1 in -> 32 in. By definition.
    """
    positive(body=body)
    not_negative(body_with_ease=body + wanted_ease)
    return body + wanted_ease
