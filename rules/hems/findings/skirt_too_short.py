"""Skirt too short."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Skirt too short",
    problem="too_short",
    stage="hem",
    why="Cloth shrinks in the first wash, and fashions and wearers differ: what is folded up inside decides how far "
    "it goes down.",
    source="IKAT",
    when=(
        given(
            "the lower edge is measured against where it should be",
            Joined(kind="fit", role="skirt_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short.",
    fires=(
        fires(
            "1 in",
            joined("fit", ("edge.length", "skirt_end"), ("edge.wanted", "skirt_end"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
