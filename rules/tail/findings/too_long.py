"""Tail or hem too long."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Tail or hem too long",
    problem="tail_long",
    stage="hem",
    why="A tail that is too long bulges under the belt or hangs out below what is worn over it.",
    source="common-practice",
    when=(
        given(
            "the lower edge is measured against where it should be",
            Joined(
                kind="fit", role="body_hem", slot="length", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack
            ),
        ),
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too long.",
    fires=(
        fires(
            "2 in too long",
            joined("fit", ("tail.length", "body_hem"), ("tail.wanted", "body_hem"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
        near("another measure of it", slot="uneven_by"),
    ),
)
