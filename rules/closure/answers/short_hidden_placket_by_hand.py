"""A hand-worked hidden placket for a short closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="A hand-worked hidden placket for a short closure",
    problem="closure_short",
    fix="closure.fixes.hidden_placket_by_hand",
    role="front_opening",
    why="The strips are cut to the length of the opening; the holes, worked by hand, lie where nobody "
    "sees whether they are even.",
    source="common-practice",
    when=(
        given(
            "a zipper or snaps close it",
            Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating", "snaps")),
        ),
        given("the machine makes no buttonholes", Trait(role="bench", slot="buttonholes", word="no")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("bench.buttonholes", "bench", "no"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it makes them", at=2, word="yes"),
    ),
)
