"""Shorten a long covered zipper from the top."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Shorten a long covered zipper from the top",
    problem="closure_long",
    fix="closure.fixes.shorten_zipper_top_covered",
    role="front_opening",
    why="What is over comes off at the top, where the tapes are folded into the cover; the cover has to "
    "be opened for it and closed again.",
    source="IRONF",
    when=(
        given("a zipper closes it", Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating"))),
        given("the zipper lies behind a fly or a lining", Trait(place=MATCH.place, slot="setting", word="covered")),
    ),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.setting", "front_opening", "covered"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("snaps close it", at=1, word="snaps"),
        near("it is set in plainly", at=2, word="plain"),
    ),
)
