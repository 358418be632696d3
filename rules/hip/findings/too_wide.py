"""Too wide at the hip."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Too wide at the hip",
    problem="hip_wide",
    stage="level",
    why="Seat and hip are settled before the waist: whatever the hip gives up, the waist gives up along the same "
    "seams. Width at the hip is also a matter of cut; only what was pinned away counts as too much.",
    source="TM227-25",
    when=(
        given(
            "the round at the hip is measured against what is wanted",
            Joined(kind="fit", role="hip", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is wider by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says="Round {place} it is {over} too wide.",
    fires=(fires("2 in", joined("fit", ("hip.round", "hip"), ("hip.wanted", "hip"), "2 in"), amount=length("2 in")),),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
