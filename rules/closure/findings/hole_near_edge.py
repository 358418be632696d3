"""The buttonholes lie too near the edge, or too far from it."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return abs(over)


rule = Find(
    title="Buttonholes in the wrong place from the edge",
    problem="hole_near_edge",
    stage="closure",
    why="Under strain a button lies at the end of its hole nearest the edge: too near, and it hangs over; too far, "
    "and the "
    "fronts lap less than they should.",
    source="common-practice",
    when=(
        given(
            "it is measured where a strained button lies",
            Joined(
                kind="hole",
                slot="clear",
                place=MATCH.place,
                role=MATCH.role,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("it is off by more than a tape can miss", lambda over, slack: abs(over) > slack),
    ),
    amount=amount,
    says="Under strain the buttons of {place} lie {over} too {way} the edge.",
    reckons={"way": lambda over: "far from" if over > 0 else "near"},
    fires=(
        fires(
            "flush with the edge",
            joined(
                "hole",
                ("front.clear", "front_opening"),
                ("front.clear_wanted", "front_opening"),
                "1/8 in",
                under=True,
            ),
            amount=length("1/8 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("it is how long the hole is", slot="hole"),
    ),
)
