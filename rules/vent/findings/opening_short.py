"""A slit or vent is too short to walk in."""

from advisor.knowledge import MATCH, Find, Joined, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import joined, length, trait


def off(over: Mm, slack: Mm, seam: str) -> bool:
    """As found it may be longer than it must be; one that was raised is held to what was asked."""
    return over < -slack or (seam == "raised" and over > slack)


rule = Find(
    title="Vent too short",
    problem="vent_short",
    stage="finish",
    why="A vent is measured from the edge up: shortened by a hem, a skirt loses as much of it, and with it the step. "
    "What is forced tears at its top.",
    source="ICONIC",
    when=(
        given(
            "the seam above a vent is as found or was raised",
            Trait(role="vent", place=MATCH.place, slot="seam", word=MATCH.seam),
        ),
        given(
            "the edge is held against the top of the vent",
            Joined(kind="reach", other=MATCH.place, other_role="vent", over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is not as long as the step asks", off),
    ),
    amount=lambda over: abs(over),
    says="{place} is {over} too short for the step, measured from the finished edge up.",
    fires=(
        fires(
            "2 in too short after shortening",
            trait("vent.seam", "vent", "sewn"),
            joined(
                "reach", ("edge.length", "skirt_end"), ("vent.needed", "vent"), "2 in", under=True, relation="at_least"
            ),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("longer than it must be", at=1, over_mm=length("2 in")),
        near("a seam of another part", role="side_opening"),
        near("what it reaches is no vent", at=1, other_role="trunk"),
        near("a closure", at=1, kind="closure"),
        near_without("nobody looked at the seam", at=0),
    ),
)
