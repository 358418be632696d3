"""The strips of the front came out with another width or length than they should have."""

from advisor.knowledge import MATCH, Find, Joined, fires, given, joined, length, near, such_that

rule = Find(
    title="Strips of the wrong size",
    problem="strip_misfits",
    stage="closure",
    why="A strip finishes at half its cut width less one seam: cut at twice the lap alone, it laps too little.",
    source="common-practice",
    when=(
        given(
            "a strip and the place it was cut for are measured",
            Joined(
                kind="piece",
                role="front_opening",
                place=MATCH.place,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("it is off by more than a tape can miss", lambda over, slack: abs(over) > slack),
    ),
    says="A strip of {place} is {over} too {way} for its place.",
    reckons={"way": lambda over: "large" if over > 0 else "small"},
    fires=(
        fires(
            "cut without the allowances",
            joined(
                "piece",
                ("front.strip_width", "front_opening"),
                ("front.overlap", "front_opening"),
                "1 in",
                under=True,
            ),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is a piece for another place", role="sleeve_end"),
        near("it is a band and its edge", kind="band"),
    ),
)
