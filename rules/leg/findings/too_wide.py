"""Leg too wide."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Leg too wide",
    problem="leg_wide",
    stage="girth",
    why="A wide leg is a cut as often as a fault, but one that catches the other foot, a chain or a ladder is in the "
    "way. What is done to one leg is done to both.",
    source="common-practice",
    when=(
        given(
            "the round of the leg is measured against what is wanted",
            Joined(kind="fit", role="leg_girth", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is wider by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="At {place} each leg is {over} too wide.",
    fires=(
        fires(
            "2 in",
            joined("fit", ("knee.round", "leg_girth"), ("knee.wanted", "leg_girth"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
