"""Leg too narrow."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Leg too narrow",
    problem="leg_narrow",
    stage="girth",
    why="A leg that is too narrow binds on a stair, creeps up when she sits, and wears through where it rubs. A "
    "university text asks 1 in of room at the least round a thigh, an extension bulletin 1 in at the knee.",
    source="CWU16",
    when=(
        given(
            "the round of the leg is measured against what is wanted",
            Joined(kind="fit", role="leg_girth", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is narrower by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="At {place} each leg is {over} too narrow.",
    fires=(
        fires(
            "1 in",
            joined("fit", ("thigh.round", "leg_girth"), ("thigh.wanted", "leg_girth"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("another part is measured", role="lower_part"),
        near("an edge that is sewn on, not a fit", kind="seam"),
    ),
)
