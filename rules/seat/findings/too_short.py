"""Back too short over the seat."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Back too short over the seat",
    problem="seat_short",
    stage="level",
    why="A full seat, or one who sits all day, needs more length at the back: what is wanting draws the waist down "
    "as soon as she sits. Width does not cure it.",
    source="THREADS-SEAT",
    when=(
        given(
            "the back over the seat is measured against what is wanted",
            Joined(kind="fit", role="seat", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} too short: seated, the waist is drawn down at the back.",
    fires=(
        fires(
            "1 in",
            joined("fit", ("seat.rise", "seat"), ("seat.wanted", "seat"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
