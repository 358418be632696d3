"""The band of a slit is not as long as the slit."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return abs(over)


rule = Find(
    title="Band of the slit does not fit",
    problem="binding_misfits",
    stage="finish",
    why="A band that is too short draws the slit together at its end; one that is too long stands up there.",
    source="common-practice",
    when=(
        given(
            "a slit and its band are measured",
            Joined(kind="band", role="cuff", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("they differ by more than a tape can miss", lambda over, slack: abs(over) > slack),
    ),
    amount=amount,
    says="The band of the slit above {place} is {over} too {way} for it.",
    reckons={"way": lambda over: "long" if over > 0 else "short"},
    fires=(
        fires(
            "1/4 in too short",
            joined("band", ("cuff.binding", "cuff"), ("cuff.placket", "cuff"), "1/4 in", under=True),
            amount=length("1/4 in"),
        ),
        fires(
            "1/4 in too long",
            joined("band", ("cuff.binding", "cuff"), ("cuff.placket", "cuff"), "1/4 in"),
            amount=length("1/4 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("the band of another part", role="waistband"),
        near("it is a piece, not a band", kind="piece"),
    ),
)
