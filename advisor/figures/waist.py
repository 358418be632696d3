"""Waistbands: how long, how far a garment eases into one, what both must lose together."""

from advisor.figures.exact import inches, need, not_negative, positive
from advisor.figures.formula import Count, Mm, formula

UNDERLAP = (inches("1"), inches("1 1/4"))
"""An underlap stays within these when a band is shortened: TILLI has 1 in (2.5 cm), RETROGLAM 3/4 in."""
EASED_IN = (inches("1/2"), inches("1"))
"""A garment's waist is this much longer than its band and eased to it: common practice, no source."""


@formula("waist.band_finished", words="{body} + {ease} + {underlap}", source="RETROGLAM", gives="mm")
def band_finished(body: Mm, ease: Mm, underlap: Mm) -> Mm:
    """Finished length of a waistband made from the body; the garment follows the band.

    Millimeters, end to end. FigureError if the body is not more than 0 or the underlap negative; ease
    may be negative in stretch cloth. Body + ease + underlap.
    Worked: body=30 in, ease=1 in, underlap=1 1/4 in -> 32 1/4 in. Source RETROGLAM.
    """
    positive(body=body)
    not_negative(underlap=underlap)
    return body + ease + underlap


@formula("waist.band_cut", words="{finished} + 2 x {allowance}", source="TILLI", gives="mm")
def band_cut(finished: Mm, allowance: Mm) -> Mm:
    """Length to cut for a band in one piece, a seam allowance at each end.

    Millimeters. FigureError if the finished length is not more than 0 or the allowance negative.
    Finished + two allowances. Worked: finished=32 in, allowance=1/2 in -> 33 in. Source TILLI (1 cm at each end).
    """
    positive(finished=finished)
    not_negative(allowance=allowance)
    return finished + 2 * allowance


@formula("waist.band_after", words="{band} - {loss}", source="common-practice", gives="mm")
def band_after(band: Mm, loss: Mm) -> Mm:
    """The band's length once it has lost what the garment loses, the two agreeing before.

    Millimeters; the underlap keeps its length. FigureError if nothing would be left.
    Band less loss. Worked: band=34 in, loss=2 in -> 32 in. Common practice, no source.
    """
    positive(band=band)
    not_negative(loss=loss)
    need(loss < band, "nothing of the band would be left")
    return band - loss


@formula("waist.to_ease_in", words="{garment} - {band}", source="common-practice", gives="mm")
def to_ease_in(garment: Mm, band: Mm) -> Mm:
    """What the garment's waist must ease in to meet its band; 1/2-1 in is usual.

    Millimeters, negative if the band is the longer one. FigureError if a length is not more than 0.
    Garment less band. Worked: garment=31 in, band=30 1/4 in -> 3/4 in. Common practice, no source.
    """
    positive(garment=garment, band=band)
    return garment - band


@formula("waist.garment_loss", words="{garment} - {band} - {eased_in}", source="common-practice", gives="mm")
def garment_loss(garment: Mm, band: Mm, eased_in: Mm) -> Mm:
    """What seams or darts must take so that the garment eases to its band by `eased_in`.

    Millimeters. FigureError if the garment is too small for that already.
    Garment - band - eased in. Worked: garment=34 in, band=31 in, eased_in=1 in -> 2 in.
    Common practice, no source.
    """
    positive(garment=garment, band=band)
    not_negative(eased_in=eased_in)
    loss = garment - band - eased_in
    need(loss >= 0, "the garment is smaller than the band already", "let the garment out, or ease less")
    return loss


@formula("waist.loops_apart", words="{band} / {loops}", source="common-practice", gives="mm")
def loops_apart(band: Mm, loops: Count) -> Mm:
    """How far apart belt loops stand when they are set again evenly round a closed band.

    Millimeters. FigureError if the band is not more than 0 or there is no loop.
    Band over loops. Worked: band=35 in, loops=5 -> 7 in. Common practice, no source.
    """
    positive(band=band, loops=loops)
    return band / loops
