"""Skirt too long."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Skirt too long",
    problem="too_long",
    stage="hem",
    why="An edge that hangs too low is stepped on and gets wet; it is looked at when waist and hip have settled, and "
    "may be right by then.",
    source="USDA-FIT15",
    when=(
        given(
            "the lower edge is measured against where it should be",
            Joined(kind="fit", role="skirt_end", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="{place} is {over} too long.",
    fires=(
        fires(
            "2 in",
            joined("fit", ("edge.length", "skirt_end"), ("edge.wanted", "skirt_end"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
