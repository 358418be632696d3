"""The trunk loop of the garment is shorter than the body and its room to move."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Trunk too short",
    problem="trunk_short",
    stage="girth",
    why="A one-piece hangs from the shoulders and passes through the crotch: what its loop lacks pulls at both as "
    "soon as the wearer sits, bends or lifts an arm, and in the end the crotch seam gives.",
    source="common-practice",
    when=(
        given(
            "the loop from shoulder through the crotch and back is held against the body",
            Joined(kind="reach", role="trunk", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is shorter than it must be by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="{place} is {over} shorter than the body and the room to move in it.",
    fires=(
        fires(
            "2 in short",
            joined(
                "reach", ("trunk.loop", "trunk"), ("trunk.needed", "trunk"), "2 in", under=True, relation="at_least"
            ),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("longer than it must be", over_mm=length("2 in")),
        near("another loop", role="sleeve_end"),
        near("an edge sewn on", kind="seam"),
    ),
)
