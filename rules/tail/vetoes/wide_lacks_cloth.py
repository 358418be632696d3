"""Not enough cloth for a hem 1/2 in deep."""

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

LEAST = length("3/4 in")


def there(amount: Mm, turn_up: Mm) -> Mm:
    return amount + turn_up


rule = Veto(
    title="Not enough cloth for a hem 1/2 in deep",
    fix="tail.fixes.wide_hem",
    why="It takes 1/4 in under and 1/2 in up.",
    source="ASG-HEM",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role="body_hem", slot="turn_up", mm=MATCH.turn_up)),
        such_that("there is less cloth than the hem takes", lambda amount, turn_up: there(amount, turn_up) < LEAST),
    ),
    reckons={"there": there},
    says="With what is too long and what comes down there is {there} to turn up; this hem takes 3/4 in.",
    fires=(
        fires(
            "1/8 in and no hem",
            offered("tail_long", "tail", "body_hem", "tail.fixes.wide_hem"),
            problem("tail_long", "tail", "body_hem", "hem", "1/8 in"),
            measure("tail.turn_up", "body_hem", "1/4 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("longer", at=1, mm=length("1 in")),
        near("more comes down", at=2, mm=length("1 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
