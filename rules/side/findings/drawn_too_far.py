"""A side opening was drawn too far together."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Side opening drawn too far together",
    problem="drawn_too_far",
    stage="finish",
    why="Edges that are pulled past where they would meet drag the cloth beside them, and the closing tears out.",
    source="common-practice",
    when=(
        given(
            "an opening is measured against what is wanted",
            Joined(kind="fit", role="side_opening", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is drawn together by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="At {place} the edges are drawn {over} too far together, and the cloth beside them pulls.",
    fires=(
        fires(
            "1/4 in too far",
            joined(
                "fit",
                ("side_opening.gape", "side_opening"),
                ("side_opening.want", "side_opening"),
                "1/4 in",
                under=True,
            ),
            amount=length("1/4 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it stands open", over_mm=length("1/4 in")),
        near("another fit", role="lower_part"),
        near("edges sewn together", kind="seam"),
    ),
)
