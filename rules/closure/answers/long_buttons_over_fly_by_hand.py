"""Hand-worked buttonholes and a fly for a long closure."""

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
    title="Hand-worked buttonholes and a fly for a long closure",
    problem="closure_long",
    fix="closure.fixes.buttons_over_fly_by_hand",
    role="front_opening",
    why="The seam that moved parts the front in two: hand-worked buttonholes end above it, and a short "
    "zipper begins below it.",
    source="common-practice",
    when=(
        given(
            "a zipper or snaps close it",
            Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating", "snaps")),
        ),
        given("the opening runs down past the waist", Trait(place=MATCH.place, slot="fly", word="yes")),
        given("the machine makes no buttonholes", Trait(role="bench", slot="buttonholes", word="no")),
        unless("the metal in the edge stays on", Trait(role="hardware", slot="state", word="gone")),
    ),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.fly", "front_opening", "yes"),
            trait("bench.buttonholes", "bench", "no"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it ends near the waist", at=2, word="no"),
        near("it makes them", at=3, word="yes"),
        near_with("it was taken off", trait("snaps.state", "hardware", "gone")),
    ),
)
