"""Buttons instead of a short closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Buttons instead of a short closure",
    problem="closure_short",
    fix="closure.fixes.buttons",
    role="front_opening",
    why="A row of buttons can be as long as the opening, to its last stitch.",
    source="common-practice",
    when=(
        given(
            "a zipper or snaps close it",
            Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating", "snaps")),
        ),
        given("the machine makes buttonholes", Trait(role="bench", slot="buttonholes", word="yes")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("bench.buttonholes", "bench", "yes"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it makes none", at=2, word="no"),
    ),
)
