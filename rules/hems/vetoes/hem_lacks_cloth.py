"""Not enough cloth for this hem."""

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
from advisor.operations.hem_plans import takes


def has(amount: Mm, turn_up: Mm) -> Mm:
    return amount + turn_up


rule = Veto(
    title="Not enough cloth for this hem",
    why=(
        "Cut from what is too long and from what comes down when the old hem is opened, the new hem must still have "
        "its allowance."
    ),
    source="common-practice",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        such_that(
            "there is less cloth than the hem takes",
            lambda name, fix, role, amount, turn_up: name == "too_long" and has(amount, turn_up) < takes(fix, role),
        ),
    ),
    reckons={"has": has, "takes": takes},
    says="With what is too long and the {turn_up} that comes down there is {has} to turn up; this hem takes {takes}.",
    fires=(
        fires(
            "1/2 in of a narrow hem",
            offered("too_long", "leg", "leg_end", "hems.fixes.wide_hem"),
            problem("too_long", "leg", "leg_end", "hem", "1/2 in"),
            measure("leg.turn_up", "leg_end", "1 in"),
        ),
    ),
    near=(
        near("a hem that takes less", at=0, fix="hems.fixes.double_fold"),
        near("longer", at=1, mm=length("1 in")),
        near("more comes down", at=2, mm=length("1 1/2 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
