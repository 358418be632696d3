"""A buttonhole in place of metal does not fit its button."""

from advisor.figures.buttons import hole_flat_thin
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


def amount(button: Mm, slit: Mm) -> Mm:
    return abs(slit - hole_flat_thin(button))


rule = Find(
    title="A buttonhole that does not fit its button",
    problem="buttonhole_misfit",
    stage="finish",
    why=(
        "Too short and the button will not pass, too long and it slips open. For a flat, thin button the hole is the "
        "button and 1/8 in."
    ),
    source="HB-BH",
    when=(
        given(
            "a button sits where metal was",
            Trait(role="hardware", place=MATCH.place, slot="holes", word="buttoned"),
        ),
        given("the button", Measure(place=MATCH.place, role="hardware", slot="button", mm=MATCH.button)),
        given("the hole", Measure(place=MATCH.place, role="hardware", slot="buttonhole", mm=MATCH.slit)),
        such_that("it is not the button and 1/8 in", lambda button, slit: slit != hole_flat_thin(button)),
    ),
    amount=amount,
    reckons={"wanted": lambda button: hole_flat_thin(button)},
    says="The buttonholes in place of {place} are {slit} long; these buttons need {wanted}.",
    fires=(
        fires(
            "as long as the button",
            trait("snaps.holes", "hardware", "buttoned"),
            measure("snaps.button", "hardware", "5/8 in"),
            measure("snaps.buttonhole", "hardware", "5/8 in"),
            amount=length("1/8 in"),
        ),
    ),
    near=(
        near("the hole is patched", word="patched"),
        near("1/8 in more than the button", at=2, mm=length("3/4 in")),
        near("a smaller button", at=1, mm=length("1/2 in")),
        near("it is the patch that was measured", at=2, slot="cover"),
    ),
)
