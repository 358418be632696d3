"""Too little to turn up."""

from advisor.figures.exact import inches
from advisor.knowledge import (
    MATCH,
    Measure,
    Mm,
    Veto,
    fires,
    given,
    length,
    measure,
    near,
    near_without,
    offered,
    problem,
    such_that,
)

LEAST = inches("1/2")


def deep(amount: Mm, turn_up: Mm) -> Mm:
    return amount + turn_up


rule = Veto(
    title="Too little to turn up",
    fix="hems.fixes.turn_all_up",
    why="Under 1/2 in there is no hem to be made of it: the raw edge would not be shut in.",
    source="common-practice",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        such_that("all of it is less than 1/2 in", lambda amount, turn_up: deep(amount, turn_up) < LEAST),
    ),
    reckons={"deep": deep},
    says="With what comes down there is {deep} to turn up; a narrow hem takes 1/2 in.",
    fires=(
        fires(
            "1/4 in and no hem",
            offered("too_long", "sleeve", "sleeve_end", "hems.fixes.turn_all_up"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "1/4 in"),
            measure("sleeve.turn_up", "sleeve_end", "0 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.tuck_above_edge"),
        near("just 1/2 in", at=1, mm=length("1/2 in")),
        near("an old hem comes down", at=2, mm=length("1 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
