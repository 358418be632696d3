"""A slit above a cuff that no longer lets the hand through."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Slit above the cuff too short",
    problem="slit_short",
    stage="finish",
    why=(
        "A sleeve that is shortened above its cuff loses as much from the slit, and a cuff whose slit is under 3 in is "
        "hard to get a hand through and tears at the end of the slit. Shirts come with about 6 in."
    ),
    source="SHIRTBOOK-CUFF",
    when=(
        given(
            "the slit is measured against the hand",
            Joined(
                kind="reach", role="cuff", slot="placket", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack
            ),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says="The slit above {place} is {over} shorter than the 3 in a hand needs.",
    fires=(
        fires(
            "2 1/2 in are left",
            joined(
                "reach",
                ("cuff.placket", "cuff"),
                ("cuff.placket_least", "cuff"),
                "1/2 in",
                under=True,
                relation="at_least",
            ),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("the band of it is measured", slot="binding"),
        near("it is a loop of another part", role="trunk"),
        near("it is a band, not a reach", kind="band"),
    ),
)
