"""Not enough cloth for a narrow hem."""

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

LEAST = length("1/2 in")


def there(amount: Mm, turn_up: Mm) -> Mm:
    return amount + turn_up


rule = Veto(
    title="Not enough cloth for a narrow hem",
    fix="tail.fixes.narrow_hem",
    why="A narrow hem takes two turns of 1/4 in.",
    source="OSU-L87",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role="body_hem", slot="turn_up", mm=MATCH.turn_up)),
        such_that("there is less cloth than the hem takes", lambda amount, turn_up: there(amount, turn_up) < LEAST),
    ),
    reckons={"there": there},
    says="With what is too long and what comes down there is {there} to turn up; this hem takes 1/2 in.",
    fires=(
        fires(
            "1/8 in and no hem",
            offered("tail_long", "tail", "body_hem", "tail.fixes.narrow_hem"),
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
