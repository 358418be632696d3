"""Add a fastening to a short row."""

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
    title="Add a fastening to a short row",
    problem="closure_short",
    fix="closure.fixes.add_fastening",
    role="front_opening",
    why="A row of single fastenings is lengthened by one more at the end that stands open.",
    source="common-practice",
    when=(
        given("snaps or buttons close it", Trait(place=MATCH.place, slot="kind", word=one_of("snaps", "buttoned"))),
        unless("the metal in the edge stays on", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "snaps"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("a zipper closes it", at=1, word="closed_end"),
        near_with("it was taken off", trait("snaps.state", "hardware", "gone")),
    ),
)
