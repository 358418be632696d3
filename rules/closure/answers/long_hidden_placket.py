"""A hidden placket instead of a long closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="A hidden placket instead of a long closure",
    problem="closure_long",
    fix="closure.fixes.hidden_placket",
    role="front_opening",
    why="The strips are cut to the length the opening has now, and what closes the front is out of sight "
    "and out of wear.",
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
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("bench.buttonholes", "bench", "yes"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it makes none", at=2, word="no"),
    ),
)
