"""New snaps in a shorter row."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="New snaps in a shorter row",
    problem="closure_long",
    fix="closure.fixes.new_snaps",
    role="front_opening",
    why="The old snaps are off already, so a new row can be set to the length the opening has now.",
    source="common-practice",
    when=(
        given("it closed with snaps", Trait(place=MATCH.place, slot="kind", word="snaps")),
        given("the metal in the edge is off", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "snaps"),
            trait("snaps.state", "hardware", "gone"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("a zipper closes it", at=1, word="closed_end"),
        near("it is still on", at=2, word="sound"),
    ),
)
