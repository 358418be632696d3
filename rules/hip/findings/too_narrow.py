"""Too narrow at the hip."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Too narrow at the hip",
    problem="hip_narrow",
    stage="level",
    why="A hip that is too narrow strains in level folds, pulls pockets and zipper open, and bursts the seat seam "
    "when she sits. No closing and no waist cures it. A university text gives 2 to 2 3/4 in of room, an extension "
    "bulletin at least 2 to 4 in for trousers.",
    source="NMSU-C209",
    when=(
        given(
            "the round at the hip is measured against what is wanted",
            Joined(kind="fit", role="hip", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is narrower by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="Round {place} it is {over} too narrow.",
    fires=(
        fires(
            "1 in",
            joined("fit", ("hip.round", "hip"), ("hip.wanted", "hip"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
