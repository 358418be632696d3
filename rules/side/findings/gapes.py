"""A side opening stands open."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Side opening stands open",
    problem="gapes",
    stage="closure",
    why=(
        "A slit gapes because its edge is loose or stretched, or because the body pulls it open. A closing cures "
        "the first and tears at the second, so it matters how it lies when it is empty."
    ),
    source="common-practice",
    when=(
        given(
            "an opening is measured against what is wanted",
            Joined(kind="fit", role="side_opening", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it stands open by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="At {place} the edges stand {over} apart at the widest, on both sides of the body.",
    fires=(
        fires(
            "1 in open",
            joined("fit", ("side_opening.gape", "side_opening"), ("side_opening.want", "side_opening"), "1 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("drawn too far together", over_mm=-length("1 in")),
        near("another fit", role="lower_part"),
        near("edges sewn together", kind="seam"),
    ),
)
