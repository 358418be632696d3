"""A new flap's last line of stitching is not where it must run."""

from advisor.figures.plackets import FLAP_PLACED, FLAP_SEWN, FLAP_TOPSTITCHED, flap_clears_mouth
from advisor.knowledge import (
    MATCH,
    Find,
    Measure,
    Mm,
    Trait,
    fires,
    given,
    length,
    measure,
    near,
    such_that,
    trait,
)

CLEAR = flap_clears_mouth(FLAP_PLACED, FLAP_SEWN, FLAP_TOPSTITCHED)


def amount(clear: Mm) -> Mm:
    return abs(clear - CLEAR)


rule = Find(
    title="A flap set too high or too low",
    problem="flap_misset",
    stage="finish",
    why=(
        "The last line of stitching must shut the raw edge in and still run above the pocket, or the pocket is sewn "
        "shut. 3/8 in above the pocket, 1/8 in from the edge, then 1/4 in below the fold: it runs 1/4 in above."
    ),
    source="common-practice",
    when=(
        given("a flap is new", Trait(role="hardware", place=MATCH.place, slot="flap", word="renewed")),
        given(
            "its stitching was measured",
            Measure(place=MATCH.place, role="hardware", slot="flap_clear", mm=MATCH.clear),
        ),
        such_that("it does not run 1/4 in above the pocket", lambda clear: clear != CLEAR),
    ),
    amount=amount,
    reckons={"wanted": lambda: CLEAR},
    says="The last stitching of the new flap runs {clear} above the pocket; it should run {wanted} above it.",
    fires=(
        fires(
            "sewn on the pocket mouth",
            trait("snaps.flap", "hardware", "renewed"),
            measure("snaps.flap_clear", "hardware", "0 in"),
            amount=length("1/4 in"),
        ),
    ),
    near=(
        near("the old flap is still on", word="on"),
        near("it runs where it must", at=1, mm=length("1/4 in")),
        near("it is the hole that was measured", at=1, slot="hole"),
    ),
)
