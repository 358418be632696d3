"""A leg ends below where it should."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Leg too long",
    problem="too_long",
    stage="hem",
    why=(
        "A leg that hangs too low is stepped on and gets wet. Every seam above it moves it: it is "
        "looked at only when waist and crotch have settled, and may be right by then."
    ),
    source="HB-PANT",
    when=(
        given(
            "an end is measured against where it should be",
            Joined(kind="fit", role="leg_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too long. There are two, and what is done to one is done to both.",
    fires=(
        fires(
            "a leg 2 in too long",
            joined("fit", ("leg.length", "leg_end"), ("leg.wanted", "leg_end"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("too short, not too long", over_mm=-length("2 in")),
        near("another part", role="lower_part"),
        near("edges that are sewn together", kind="seam"),
    ),
)
