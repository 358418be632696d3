"""The waist seam sits above the waist of the body."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Waist seam too high",
    problem="waist_high",
    stage="level",
    why="The part above the seam is shorter than the body from shoulder to waist: the seam rides up, pulls at the "
    "shoulders, and opens above whatever is worn beneath.",
    source="common-practice",
    when=(
        given(
            "the part above the waist seam is measured against the body",
            Joined(kind="fit", role="upper_part", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short: the waist seam sits that far above the waist of the body.",
    fires=(
        fires(
            "1 in high",
            joined("fit", ("bodice.length", "upper_part"), ("bodice.wanted", "upper_part"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the lower part that is measured", role="lower_part"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
