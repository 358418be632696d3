"""New snaps in a longer row."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="New snaps in a longer row",
    problem="closure_short",
    fix="closure.fixes.new_snaps",
    role="front_opening",
    why="The old snaps are off already, so a new row can be set to the whole length of the opening.",
    source="common-practice",
    when=(
        given("it closed with snaps", Trait(place=MATCH.place, slot="kind", word="snaps")),
        given("the metal in the edge is off", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "snaps"),
            trait("snaps.state", "hardware", "gone"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("a zipper closes it", at=1, word="closed_end"),
        near("it is still on", at=2, word="sound"),
    ),
)
