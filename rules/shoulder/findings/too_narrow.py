"""Shoulders that stop short of the bone."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Shoulders too narrow",
    problem="shoulder_narrow",
    stage="girth",
    why=(
        "A shoulder that stops short cuts into the arm and drags lines from the armhole to the neck; there is "
        "next to nothing in the seam to give."
    ),
    source="WEILAND",
    when=(
        given(
            "the shoulders are measured against the bones",
            Joined(kind="fit", role="shoulder", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("they are narrower by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} stop {over} short of the bone on each side.",
    fires=(
        fires(
            "1/8 in short of the bone",
            joined("fit", ("shoulder.length", "shoulder"), ("shoulder.wanted", "shoulder"), "1/8 in", under=True),
            amount=length("1/8 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
