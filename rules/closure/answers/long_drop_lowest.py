"""Take off the lowest fastenings of a long row."""

from advisor.knowledge import (
    MATCH,
    Answer,
    Trait,
    fires,
    given,
    near,
    near_with,
    one_of,
    problem,
    trait,
    unless,
)

rule = Answer(
    title="Take fastenings out of a row that lost cloth",
    problem="closure_long",
    fix="closure.fixes.drop_lowest",
    role="front_opening",
    why="A row of single fastenings is shortened by leaving one out where two now stand too near each other.",
    source="common-practice",
    when=(
        given("snaps or buttons close it", Trait(place=MATCH.place, slot="kind", word=one_of("snaps", "buttoned"))),
        unless("the metal in the edge stays on", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "snaps"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("a zipper closes it", at=1, word="closed_end"),
        near_with("it was taken off", trait("snaps.state", "hardware", "gone")),
    ),
)
