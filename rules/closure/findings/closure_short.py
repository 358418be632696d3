"""A closure is shorter than the opening it closes."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Closure shorter than its opening",
    problem="closure_short",
    stage="closure",
    why="What a closure does not reach stands open, and the pull of the whole front comes on its last tooth or "
    "fastening.",
    source="common-practice",
    when=(
        given(
            "a closure and its opening are measured",
            Joined(kind="closure", place=MATCH.place, role=MATCH.role, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("the closure is shorter by more than a tape can miss", lambda over, slack: -over > slack),
    ),
    amount=amount,
    says="The closure of {place} is {over} shorter than the opening, which stands open there.",
    fires=(
        fires(
            "1 in too short",
            joined(
                "closure",
                ("front.closure", "front_opening"),
                ("front.opening", "front_opening"),
                "1 in",
                under=True,
            ),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("too long, not too short", over_mm=length("1 in")),
        near("it is a band that is too short", kind="band"),
    ),
)
