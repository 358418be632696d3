"""A skirt in one round hobbles the step."""

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
    near_without,
    such_that,
    trait,
)

MISSED = length("1/32 in")


def amount(step: Mm, opened: Mm) -> Mm:
    return abs(step - opened)


rule = Find(
    title="No room for a step",
    problem="stride_short",
    stage="finish",
    why="What the step asks for round the edge has to come from somewhere: a narrow skirt without a slit is forced "
    "open at its weakest seam.",
    source="ICONIC",
    when=(
        given("one cannot walk in it", Trait(role="vent", place=MATCH.place, slot="walks", word="no")),
        given("and nothing opens at the edge", Trait(role="vent", place=MATCH.place, slot="kind", word="none")),
        given("what the step asks for is known", Measure(role="vent", place=MATCH.place, slot="step", mm=MATCH.step)),
        given("and what was opened for it", Measure(role="vent", place=MATCH.place, slot="opened", mm=MATCH.opened)),
        such_that("they differ by more than a tape can miss", lambda step, opened: abs(step - opened) > MISSED),
    ),
    amount=amount,
    says="Round the lower edge the step asks for {step} more than there is.",
    fires=(
        fires(
            "6 in wanting",
            trait("vent.walks", "vent", "no"),
            trait("vent.kind", "vent", "none"),
            measure("vent.step", "vent", "6 in"),
            measure("vent.opened", "vent", "0 in"),
            amount=length("6 in"),
        ),
    ),
    near=(
        near("one can walk in it", word="yes"),
        near("there is a slit", at=1, word="slit"),
        near("opened by just that", at=3, mm=length("6 in")),
        near_without("nobody measured the step", at=2),
        near_without("nobody measured what opens", at=3),
    ),
)
