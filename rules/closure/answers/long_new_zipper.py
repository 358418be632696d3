"""Change a long zipper for a shorter one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Change a long zipper for a shorter one",
    problem="closure_long",
    fix="closure.fixes.new_zipper",
    role="front_opening",
    why="A zipper bought to the new length fits without a sewn stop, and an old one that has done its "
    "time goes out with the same work.",
    source="common-practice",
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
