"""A part round chest and back is too wide."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Too wide round chest and back",
    problem="body_wide",
    stage="girth",
    why=(
        "Spare width hangs in folds from the arms, blouses over the waist and catches on whatever is near. It "
        "is judged with the arms reaching forward, where a body needs it."
    ),
    source="common-practice",
    when=(
        given(
            "a part round chest and back is measured against what the body wants",
            Joined(kind="fit", role="body_width", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is wider by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too wide, measured all round.",
    fires=(
        fires(
            "2 in too wide",
            joined("fit", ("body.round", "body_width"), ("body.wanted", "body_width"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
