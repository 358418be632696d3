"""Shoulders that hang past the bone."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Shoulders too wide",
    problem="shoulder_wide",
    stage="girth",
    why=(
        "A shoulder that hangs past the bone pulls the armhole down the arm; when the arm is lifted the whole "
        "body comes with it, and the sleeve looks long by as much."
    ),
    source="USDA-FIT5",
    when=(
        given(
            "the shoulders are measured against the bones",
            Joined(kind="fit", role="shoulder", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("they are wider by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} hang {over} past the bone on each side.",
    fires=(
        fires(
            "1/2 in past the bone",
            joined("fit", ("shoulder.length", "shoulder"), ("shoulder.wanted", "shoulder"), "1/2 in"),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
