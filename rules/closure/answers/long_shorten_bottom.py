"""Shorten a long zipper from the bottom."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Shorten a long zipper from the bottom",
    problem="closure_long",
    fix="closure.fixes.shorten_zipper_bottom",
    role="front_opening",
    why="The zipper lost none of its length when the cloth beside it did. What is over comes off below a "
    "new stop, and nobody sees that end.",
    source="WZIP",
    when=(
        given("the zipper stays together at the bottom", Trait(place=MATCH.place, slot="kind", word="closed_end")),
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
        near("it comes apart at the bottom, where pin and box sit", at=1, word="separating"),
        near("it lies behind a fly or a lining", at=2, word="covered"),
    ),
)
