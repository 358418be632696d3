"""A sleeve ends above where it should."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Sleeve too short",
    problem="too_short",
    stage="hem",
    why=(
        "Shoulders that are cut in take the sleeves up with them, and cloth shrinks in the first wash: an end that "
        "was right before may be short after."
    ),
    source="common-practice",
    when=(
        given(
            "an end is measured against where it should be",
            Joined(kind="fit", role="sleeve_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short. There are two, and what is done to one is done to both.",
    fires=(
        fires(
            "a sleeve 1 in too short",
            joined("fit", ("sleeve.length", "sleeve_end"), ("sleeve.wanted", "sleeve_end"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("too long, not too short", over_mm=length("1 1/2 in")),
        near("another part", role="lower_part"),
        near("edges that are sewn together", kind="seam"),
    ),
)
