"""Even faced, the hem does not hold what is wanted."""

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
from advisor.operations.hem_plans import FACING_SEAM


def gives(turn_up: Mm) -> Mm:
    return max(turn_up - FACING_SEAM, Mm(0))


rule = Veto(
    title="Even faced it is too short",
    fix="hems.fixes.face_hem",
    why=(
        "A facing needs 1/4 in of the garment for its seam; the rest of the old hem becomes length, and there is no "
        "more."
    ),
    source="common-practice",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        such_that(
            "it is too short by more than it gives",
            lambda name, amount, turn_up: name == "too_short" and amount > gives(turn_up),
        ),
    ),
    reckons={"gives": gives},
    says=(
        "Of the {turn_up} folded up 1/4 in must stay for the seam of the facing: it gives {gives}, and "
        "{amount} is wanted."
    ),
    fires=(
        fires(
            "2 in wanted of a 2 in hem",
            offered("too_short", "leg", "leg_end", "hems.fixes.face_hem"),
            problem("too_short", "leg", "leg_end", "hem", "2 in"),
            measure("leg.turn_up", "leg_end", "2 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.add_band"),
        near("just what it gives", at=1, mm=length("1 3/4 in")),
        near("a deeper hem", at=2, mm=length("2 1/2 in")),
        near("it is too long", at=0, name="too_long"),
        near_without("the old hem is not measured", at=2),
    ),
)
