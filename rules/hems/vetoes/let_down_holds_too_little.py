"""The hem does not hold what is wanted."""

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
from advisor.operations.hem_plans import NARROW_FOLD


def gives(turn_up: Mm) -> Mm:
    return max(turn_up - 2 * NARROW_FOLD, Mm(0))


rule = Veto(
    title="The hem holds too little",
    fix="hems.fixes.let_down",
    why="Of a hem that is let down 1/2 in must stay to be turned up again, twice 1/4 in.",
    source="OSU-L87",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        such_that("it gives less than is wanted", lambda amount, turn_up: amount > gives(turn_up)),
    ),
    reckons={"gives": gives},
    says="Of the {turn_up} folded up 1/2 in must stay for a narrow hem: it gives {gives}, and {amount} is wanted.",
    fires=(
        fires(
            "2 in wanted of a 2 in hem",
            offered("too_short", "leg", "leg_end", "hems.fixes.let_down"),
            problem("too_short", "leg", "leg_end", "hem", "2 in"),
            measure("leg.turn_up", "leg_end", "2 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.add_band"),
        near("just what it gives", at=1, mm=length("1 1/2 in")),
        near("a deeper hem", at=2, mm=length("2 1/2 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
