"""Shrinkage: to get a length after the wash divide by (1 - share), never multiply by (1 + share)."""

from advisor.figures.exact import need, positive, share_of_one
from advisor.figures.formula import Mm, Ratio, formula


@formula("shrinkage.share", words="({before} - {after}) / {before}", source="SHR-KEM", gives="ratio")
def share(before: Mm, after: Mm) -> Ratio:
    """What part of its length a cloth lost in the wash.

    A ratio from 0 up to, but not, 1. FigureError if a length is not more than 0 or it grew.
    Loss over the length before. Worked: before=20 in, after=17 in -> 15/100. Source SHR-KEM.
    """
    positive(before=before, after=after)
    need(after <= before, "the cloth grew", "exchange the two lengths, or let it hang: it drops")
    return (before - after) / before


@formula("shrinkage.loss", words="{length} x {share}", source="SHR-KEM", gives="mm")
def loss(length: Mm, share: Ratio) -> Mm:
    """How much shorter a length comes out of the wash.

    Millimeters. FigureError if the length is not more than 0 or the share not from 0 to 1.
    Length times share. Worked: length=10 in, share=3/100 -> 3/10 in. Source SHR-KEM.
    """
    positive(length=length)
    share_of_one(share=share)
    return length * share


@formula("shrinkage.after", words="{length} x (1 - {share})", source="SHR-KEM", gives="mm")
def after(length: Mm, share: Ratio) -> Mm:
    """What a length is after the wash.

    Millimeters. FigureError as for `loss`. Length x (1 - share).
    Worked: length=20 in, share=15/100 -> 17 in. Source SHR-KEM.
    """
    positive(length=length)
    share_of_one(share=share)
    return length * (1 - share)


@formula("shrinkage.before", words="{wanted} / (1 - {share})", source="SHR-KEM", gives="mm")
def before(wanted: Mm, share: Ratio) -> Mm:
    """What a length must be before the wash to be `wanted` after it.

    Millimeters. FigureError as for `loss`. Wanted / (1 - share).
    Worked: wanted=17 in, share=15/100 -> 20 in. Source SHR-KEM, turned round.
    """
    positive(wanted=wanted)
    share_of_one(share=share)
    return wanted / (1 - share)
