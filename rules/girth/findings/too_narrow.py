"""The part below the waist seam is too narrow at the waist."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Too narrow at the waist",
    problem="too_narrow",
    stage="girth",
    why="A waist that is too narrow strains its closing and the seat seam, and rides up to where the body is thinner.",
    source="common-practice",
    when=(
        given(
            "the part below the waist seam is measured against the waist wanted",
            Joined(kind="fit", role="lower_part", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is narrower by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="The waist of {place} is {over} too narrow.",
    fires=(
        fires(
            "1 in too narrow",
            joined("fit", ("trousers.edge", "lower_part"), ("waist.wanted", "waist_seam"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the upper part that is measured", role="upper_part"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
