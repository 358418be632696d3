"""Tail or hem too short."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Tail or hem too short",
    problem="tail_short",
    stage="hem",
    why=("A tail that is too short comes out of the belt when the arms go up: about 6 in below the waist stay in."),
    source="FITJUDGE",
    when=(
        given(
            "the lower edge is measured against where it should be",
            Joined(
                kind="fit", role="body_hem", slot="length", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack
            ),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short.",
    fires=(
        fires(
            "1 in too short",
            joined("fit", ("tail.length", "body_hem"), ("tail.wanted", "body_hem"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
        near("another measure of it", slot="uneven_by"),
    ),
)
