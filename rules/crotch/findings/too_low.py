"""Crotch too low."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Crotch too low",
    problem="crotch_low",
    stage="level",
    why="A crotch that hangs low hobbles the step: each leg pulls the other up with it. It is settled before waist "
    "and legs, for both move with it.",
    source="common-practice",
    when=(
        given(
            "the depth of the crotch is measured against what is wanted",
            Joined(kind="fit", role="crotch", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is deeper by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} hangs {over} too low.",
    fires=(
        fires(
            "1 in",
            joined("fit", ("crotch.depth", "crotch"), ("crotch.wanted", "crotch"), "1 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
