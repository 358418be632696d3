"""A closure is longer than the opening it closes."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Closure longer than its opening",
    problem="closure_long",
    stage="closure",
    why="A zipper or a row of fastenings that runs on past its opening buckles, or holds shut a seam that is not "
    "there.",
    source="common-practice",
    when=(
        given(
            "a closure and its opening are measured",
            Joined(kind="closure", place=MATCH.place, role=MATCH.role, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("the closure is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="The closure of {place} is {over} longer than the opening.",
    fires=(
        fires(
            "1 1/2 in too long",
            joined("closure", ("front.closure", "front_opening"), ("front.opening", "front_opening"), "1 1/2 in"),
            amount=length("1 1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is a band that is too long", kind="band"),
    ),
)
