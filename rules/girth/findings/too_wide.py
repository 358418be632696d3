"""The part below the waist seam is too wide at the waist."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Too wide at the waist",
    problem="too_wide",
    stage="girth",
    why="What the waist does not hold the hips must: the part below slides down, and what is sewn above it is dragged "
    "after it.",
    source="USDA-FIT13",
    when=(
        given(
            "the part below the waist seam is measured against the waist wanted",
            Joined(kind="fit", role="lower_part", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is wider by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="The waist of {place} is {over} too wide.",
    fires=(
        fires(
            "2 in too wide",
            joined("fit", ("trousers.edge", "lower_part"), ("waist.wanted", "waist_seam"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is the upper part that is measured", role="upper_part"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
