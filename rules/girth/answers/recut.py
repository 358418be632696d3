"""Recutting answers a waist that is too wide by more than about two sizes."""

from advisor.knowledge import Answer, Mm, fires, length, near, problem, such_that

LIMIT = length("4 in")


def past(amount: Mm) -> bool:
    return amount > LIMIT


rule = Answer(
    title="Recut what is more than two sizes too wide",
    problem="too_wide",
    fix="girth.fixes.recut",
    why="Past about two sizes, 4 in, a seam moved at the waist leaves pockets, crotch and rise where the larger size "
    "had them. Cut it anew from a pattern that fits, or pass it on to someone it fits.",
    source="NINEL",
    when=(such_that("it is more than 4 in too wide", past),),
    fires=(fires("5 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "5 in")),),
    near=(near("too narrow instead", name="too_narrow"), near("exactly 4 in", mm=length("4 in"))),
)
