"""The buttonholes are too short or too long for the buttons."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, one_of, such_that


def amount(over: Mm) -> Mm:
    return abs(over)


rule = Find(
    title="Buttonholes do not fit the buttons",
    problem="hole_misfits",
    stage="closure",
    why="A hole that is too short tears at its ends when the button is forced through; one that is too long lets it "
    "slip.",
    source="common-practice",
    when=(
        given(
            "a buttonhole and its button are measured",
            Joined(
                kind="hole",
                slot=one_of("hole", "old_hole"),
                place=MATCH.place,
                role=MATCH.role,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("they differ by more than a tape can miss", lambda over, slack: abs(over) > slack),
    ),
    amount=amount,
    says="The buttonholes of {place} are {over} too {way} for the buttons.",
    reckons={"way": lambda over: "long" if over > 0 else "short"},
    fires=(
        fires(
            "1/8 in too short",
            joined(
                "hole",
                ("front.hole", "front_opening"),
                ("front.hole_needed", "front_opening"),
                "1/8 in",
                under=True,
            ),
            amount=length("1/8 in"),
        ),
        fires(
            "old holes 1/4 in too long",
            joined(
                "hole",
                ("front.old_hole", "front_opening"),
                ("front.old_hole_wanted", "front_opening"),
                "1/4 in",
            ),
            amount=length("1/4 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("it is where the hole lies, not how long it is", slot="clear"),
        near("it is the opening that differs", kind="closure"),
    ),
)
