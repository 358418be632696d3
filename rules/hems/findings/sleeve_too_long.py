"""A sleeve ends below where it should."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Sleeve too long",
    problem="too_long",
    stage="hem",
    why=(
        "A sleeve that hangs too low covers the hand and gets into everything. The shoulder and the cuff move its "
        "end: it is looked at only when they have settled, and may be right by then."
    ),
    source="common-practice",
    when=(
        given(
            "an end is measured against where it should be",
            Joined(kind="fit", role="sleeve_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too long. There are two, and what is done to one is done to both.",
    fires=(
        fires(
            "a sleeve 1 in too long",
            joined("fit", ("sleeve.length", "sleeve_end"), ("sleeve.wanted", "sleeve_end"), "1 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("too short, not too long", over_mm=-length("2 in")),
        near("another part", role="lower_part"),
        near("edges that are sewn together", kind="seam"),
    ),
)
