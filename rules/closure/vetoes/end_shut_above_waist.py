"""An opening sewn shut so far that it would end above the waist."""

from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, length, measure, near, offered, problem, such_that


def left(opening: Mm, amount: Mm) -> Mm:
    return max(opening - amount, Mm(0))


rule = Veto(
    title="Opening would end above the waist",
    why="Hips have to pass an opening that is stepped into: it must reach well below the waist.",
    source="common-practice",
    when=(
        such_that("the fix sews the end shut", lambda fix: fix == "closure.fixes.sew_end_shut"),
        given("the opening", Measure(place=MATCH.place, slot="opening", mm=MATCH.opening)),
        given("the way down to the waist", Measure(place=MATCH.place, slot="top_to_waist", mm=MATCH.waist)),
        such_that(
            "what is left ends above the waist",
            lambda opening, amount, waist: left(opening, amount) < waist,
        ),
    ),
    says="The opening would be {left} long and end above the waist, which is {waist} down: she could not step in.",
    reckons={"left": left},
    fires=(
        fires(
            "2 in shut of an opening of 15 in",
            offered("closure_short", "front", "front_opening", "closure.fixes.sew_end_shut"),
            problem("closure_short", "front", "front_opening", "closure", "2 in"),
            measure("front.opening", "front_opening", "15 in"),
            measure("front.top_to_waist", "front_opening", "14 in"),
        ),
    ),
    near=(
        near("a longer zipper", fix="closure.fixes.new_zipper"),
        near("a longer opening", at=2, mm=length("20 in")),
        near("a higher waist", at=3, mm=length("13 in")),
        near("it is less that is sewn shut", at=1, mm=length("1 in")),
    ),
)
