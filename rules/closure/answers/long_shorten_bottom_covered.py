"""Shorten a long covered zipper from the bottom."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Shorten a long covered zipper from the bottom",
    problem="closure_long",
    fix="closure.fixes.shorten_zipper_bottom_covered",
    role="front_opening",
    why="What is over comes off below a new stop, out of sight under the cover; the cover has to be "
    "opened for it and closed again.",
    source="WZIP",
    when=(
        given("the zipper stays together at the bottom", Trait(place=MATCH.place, slot="kind", word="closed_end")),
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
        near("it comes apart at the bottom, where pin and box sit", at=1, word="separating"),
        near("it is set in plainly", at=2, word="plain"),
    ),
)
