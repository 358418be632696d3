"""The hem of a tail holds too little."""

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
from advisor.operations.tails import NARROW


def gives(turn_up: Mm) -> Mm:
    return max(turn_up - 2 * NARROW, Mm(0))


rule = Veto(
    title="The hem of the tail holds too little",
    fix="tail.fixes.let_down",
    why=(
        "Of a hem that is let down 1/2 in must stay to be turned up again, twice 1/4 in; shirts are hemmed no deeper."
    ),
    source="OSU-L87",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role="body_hem", slot="turn_up", mm=MATCH.turn_up)),
        such_that("it gives less than is wanted", lambda amount, turn_up: amount > gives(turn_up)),
    ),
    reckons={"gives": gives},
    says=("Of the {turn_up} folded up 1/2 in must stay for a narrow hem: it gives {gives}, and {amount} is wanted."),
    fires=(
        fires(
            "1 in wanted of 3/4 in",
            offered("tail_short", "tail", "body_hem", "tail.fixes.let_down"),
            problem("tail_short", "tail", "body_hem", "hem", "1 in"),
            measure("tail.turn_up", "body_hem", "3/4 in"),
        ),
    ),
    near=(
        near("another fix", fix="tail.fixes.add_band"),
        near("just what it gives", at=1, mm=length("1/4 in")),
        near("a deeper hem", at=2, mm=length("1 1/2 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
