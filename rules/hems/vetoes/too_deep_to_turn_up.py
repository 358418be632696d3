"""Too much to turn up whole."""

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

MOST = inches("4")


def deep(amount: Mm, turn_up: Mm) -> Mm:
    return amount + turn_up


rule = Veto(
    title="Too deep a hem",
    fix="hems.fixes.turn_all_up",
    why="4 in is the deepest a bulletin gives, in sheer cloth; an army manual stops at 2 in for slacks. Deeper, a "
    "hem is heavier than the end that carries it, shows through, and catches the heel or the hand.",
    source="OSU-L87",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        such_that("all of it is more than 4 in", lambda amount, turn_up: deep(amount, turn_up) > MOST),
    ),
    reckons={"deep": deep},
    says="With the old hem {deep} would be folded up inside; 4 in is the most that hangs well.",
    fires=(
        fires(
            "3 in and a hem of 2 in",
            offered("too_long", "leg", "leg_end", "hems.fixes.turn_all_up"),
            problem("too_long", "leg", "leg_end", "hem", "3 in"),
            measure("leg.turn_up", "leg_end", "2 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.wide_hem"),
        near("just 4 in", at=1, mm=length("2 in")),
        near("a narrower old hem", at=2, mm=length("1 in")),
        near_without("the old hem is not measured", at=2),
    ),
)
