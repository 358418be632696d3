"""A collar that stands away from the neck."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Collar too loose",
    problem="collar_loose",
    stage="closure",
    why="A loose collar stands away from the neck in front and falls into folds under a tie.",
    source="SACCAGGI",
    when=(
        given(
            "the collar is measured against the neck",
            Joined(kind="fit", role="collar", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too loose at the neck.",
    fires=(
        fires(
            "3/8 in too loose",
            joined("fit", ("collar.round", "collar"), ("collar.wanted", "collar"), "3/8 in"),
            amount=length("3/8 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
