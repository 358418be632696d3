"""A front that stands open between two buttons."""

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
    one_of,
    such_that,
    trait,
)


def amount(gape: Mm) -> Mm:
    return gape


rule = Find(
    title="The front gapes between two buttons",
    problem="front_gapes",
    stage="closure",
    why=(
        "A front opens where the body is fullest and no button sits. The row wants a button at the fullest part first, "
        "and the others by it; where the body itself is too narrow, no closing cures it."
    ),
    source="HB-BH",
    when=(
        given(
            "it is known how far the front stands open",
            Measure(role="button_stand", slot="gape", place=MATCH.place, mm=MATCH.gape),
        ),
        given(
            "nothing holds it there",
            Trait(role="button_stand", slot="between", place=MATCH.place, word=one_of("open", "marked")),
        ),
        such_that("it stands open", lambda gape: gape > 0),
    ),
    amount=amount,
    says="The front stands {gape} open between two buttons when the arms reach forward.",
    fires=(
        fires(
            "1/2 in open",
            measure("stand.gape", "button_stand", "1/2 in"),
            trait("stand.between", "button_stand", "open"),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("it lies shut", mm=length("0 in")),
        near("a snap holds it", at=1, word="snapped"),
        near("the opening at the side of another garment", role="side_opening"),
    ),
)
