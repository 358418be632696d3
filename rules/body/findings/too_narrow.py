"""A part round chest and back is too narrow."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Too narrow round chest and back",
    problem="body_narrow",
    stage="girth",
    why=(
        "A body that is too narrow pulls at every button, drags the back up between the arms, and tears first "
        "at the back of the armhole."
    ),
    source="common-practice",
    when=(
        given(
            "a part round chest and back is measured against what the body wants",
            Joined(kind="fit", role="body_width", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is narrower by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too narrow, measured all round.",
    fires=(
        fires(
            "1 in too narrow",
            joined("fit", ("body.round", "body_width"), ("body.wanted", "body_width"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
