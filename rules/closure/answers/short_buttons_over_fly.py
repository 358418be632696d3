"""Buttons and a fly instead of a short closure."""

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
    title="Buttons and a fly instead of a short closure",
    problem="closure_short",
    fix="closure.fixes.buttons_over_fly",
    role="front_opening",
    why="Two short closures reach where one does not: buttons to the waist, a zipper below.",
    source="common-practice",
    when=(
        given(
            "a zipper or snaps close it",
            Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating", "snaps")),
        ),
        given("the opening runs down past the waist", Trait(place=MATCH.place, slot="fly", word="yes")),
        given("the machine makes buttonholes", Trait(role="bench", slot="buttonholes", word="yes")),
        unless("the metal in the edge stays on", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.fly", "front_opening", "yes"),
            trait("bench.buttonholes", "bench", "yes"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it ends near the waist", at=2, word="no"),
        near("it makes none", at=3, word="no"),
        near_with("it was taken off", trait("snaps.state", "hardware", "gone")),
    ),
)
