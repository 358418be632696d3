"""Shorten a long zipper from the top."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Shorten a long zipper from the top",
    problem="closure_long",
    fix="closure.fixes.shorten_zipper_top",
    role="front_opening",
    why="What is over comes off at the top, the only end of a separating zipper that may be touched and "
    "by custom the one for metal teeth.",
    source="IRONF",
    when=(
        given("a zipper closes it", Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating"))),
        given("the zipper is set in plainly", Trait(place=MATCH.place, slot="setting", word="plain")),
    ),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.setting", "front_opening", "plain"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("snaps close it", at=1, word="snaps"),
        near("it lies behind a fly or a lining", at=2, word="covered"),
    ),
)
