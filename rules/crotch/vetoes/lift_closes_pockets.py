"""Lifting at the waist would close the pockets that hang there."""

from advisor.knowledge import (
    MATCH,
    Mm,
    Trait,
    Veto,
    fires,
    given,
    length,
    near,
    offered,
    one_of,
    problem,
    such_that,
    trait,
)

MOST = length("1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Pockets hang from the waist",
    fix="crotch.fixes.lift_at_waist",
    why="Mouths of pockets set into the waist and the sides lose all that is cut off the top, and felled seams, "
    "rivets and a yoke come up under the band. One trade page calls the rise of jeans practically unalterable: it is "
    "decided when they are bought.",
    source="FITTED",
    when=(
        given(
            "pockets sit in the sides, or these are felled",
            Trait(role="lower_part", slot="side_seam", word=one_of("opening", "felled"), place=MATCH.other),
        ),
        such_that("more than 1/2 in would be cut off", past),
    ),
    says="Pockets or felled seams sit in the sides of {other}: {amount} off the top would go out of pocket mouths "
    "and yoke. 1/2 in is the most there.",
    fires=(
        fires(
            "1 in off, over pockets in the sides",
            offered("crotch_low", "crotch", "crotch", "crotch.fixes.lift_at_waist"),
            problem("crotch_low", "crotch", "crotch", "level", "1 in"),
            trait("trousers.side_seam", "lower_part", "opening"),
        ),
    ),
    near=(
        near("another fix", fix="crotch.fixes.take_in_points"),
        near("exactly 1/2 in", at=1, mm=length("1/2 in")),
        near("ordinary seams", at=2, word="plain"),
    ),
)
