"""Front and back of the trunk no longer add up to its loop."""

from advisor.knowledge import MATCH, Find, Measure, Mm, fires, given, length, measure, near, near_without, such_that


def differ(loop: Mm, halves: Mm) -> bool:
    return loop != halves


def amount(loop: Mm, halves: Mm) -> Mm:
    return abs(loop - halves)


rule = Find(
    title="Front and back do not add up",
    problem="halves_differ",
    stage="finish",
    why="What is cut off or let in round the trunk is cut off or let in in front and behind; the two together are the "
    "loop. If they are not, one side was cut by another amount than the other.",
    source="common-practice",
    when=(
        given("the loop is known", Measure(role="trunk", slot="loop", place=MATCH.place, mm=MATCH.loop)),
        given("and so are front and back", Measure(role="trunk", slot="halves", place=MATCH.place, mm=MATCH.halves)),
        such_that("they are not the same length", differ),
    ),
    amount=amount,
    reckons={"apart": amount},
    says="Front and back of {place} together are {apart} off its loop: the waist was not moved alike all round.",
    fires=(
        fires(
            "1/8 in off",
            measure("trunk.loop", "trunk", "67 in"),
            measure("trunk.halves", "trunk", "67 1/8 in"),
            amount=length("1/8 in"),
        ),
    ),
    near=(
        near("they add up", mm=length("67 1/8 in")),
        near_without("only front and back were measured", at=0),
        near_without("only the loop was measured", at=1),
    ),
)
