"""A leg ends above where it should."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Leg too short",
    problem="too_short",
    stage="hem",
    why=(
        "A waist that is raised takes the legs up with it, and cloth shrinks in the first wash: an end that was "
        "right before may be short after."
    ),
    source="IKAT",
    when=(
        given(
            "an end is measured against where it should be",
            Joined(kind="fit", role="leg_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short. There are two, and what is done to one is done to both.",
    fires=(
        fires(
            "a leg 1 1/2 in too short",
            joined("fit", ("leg.length", "leg_end"), ("leg.wanted", "leg_end"), "1 1/2 in", under=True),
            amount=length("1 1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("too long, not too short", over_mm=length("1 1/2 in")),
        near("another part", role="lower_part"),
        near("edges that are sewn together", kind="seam"),
    ),
)
