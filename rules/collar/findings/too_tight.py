"""A collar too tight to button."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Collar too tight",
    problem="collar_tight",
    stage="closure",
    why=(
        "A collar that is too tight strangles, rides up the neck and draws the shoulders of the shirt in; by "
        "common practice it tears out its button too, and cotton that is washed for the first time makes it tighter "
        "still."
    ),
    source="SACCAGGI",
    when=(
        given(
            "the collar is measured against the neck",
            Joined(kind="fit", role="collar", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too tight to be buttoned.",
    fires=(
        fires(
            "3/8 in too tight",
            joined("fit", ("collar.round", "collar"), ("collar.wanted", "collar"), "3/8 in", under=True),
            amount=length("3/8 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
