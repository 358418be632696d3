"""Too little of the opening lies below the waist for a fly zipper."""

from advisor.figures.zippers import STOCK
from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, length, measure, near, offered, problem, such_that

FLY = frozenset(("closure.fixes.buttons_over_fly", "closure.fixes.buttons_over_fly_by_hand"))


def left(opening: Mm, waist: Mm) -> Mm:
    return max(opening - waist, Mm(0))


rule = Veto(
    title="Fly too short for a zipper",
    why="A fly shorter than the shortest zipper sold opens too little to step in through.",
    source="UKSEW",
    when=(
        such_that("the fix sets a fly zipper", lambda fix: fix in FLY),
        given("the opening", Measure(place=MATCH.place, slot="opening", mm=MATCH.opening)),
        given("the way down to the waist", Measure(place=MATCH.place, slot="top_to_waist", mm=MATCH.waist)),
        such_that(
            "less than the shortest zipper lies below the waist",
            lambda opening, waist: left(opening, waist) < STOCK[0],
        ),
    ),
    says="Below the waist {left} of the opening is left; the shortest zipper of the trade's list is 4 in.",
    reckons={"left": left},
    fires=(
        fires(
            "the opening ends 3 in below the waist",
            offered("closure_long", "front", "front_opening", "closure.fixes.buttons_over_fly"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            measure("front.opening", "front_opening", "17 in"),
            measure("front.top_to_waist", "front_opening", "14 in"),
        ),
    ),
    near=(
        near("buttons all the way", fix="closure.fixes.buttons"),
        near("just 4 in", at=2, mm=length("18 in")),
        near("the waist sits higher", at=3, mm=length("12 in")),
    ),
)
