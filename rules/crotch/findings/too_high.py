"""Crotch too high."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Crotch too high",
    problem="crotch_high",
    stage="level",
    why="A crotch that sits high cuts in when she sits, folds point to it like a smile, and the seat seam gives. An "
    "extension bulletin adds 1/2 to 1 in to the seated depth of the body, by hip.",
    source="NMSU-C209",
    when=(
        given(
            "the depth of the crotch is measured against what is wanted",
            Joined(kind="fit", role="crotch", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is less deep by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} sits {over} too high.",
    fires=(
        fires(
            "1/2 in",
            joined("fit", ("crotch.depth", "crotch"), ("crotch.wanted", "crotch"), "1/2 in", under=True),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
