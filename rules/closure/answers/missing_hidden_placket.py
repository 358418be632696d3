"""A hidden placket for an opening without a closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="A hidden placket for an opening without a closure",
    problem="closure_missing",
    fix="closure.fixes.hidden_placket",
    role="front_opening",
    why="The strips finish the edges, make the lap and carry the holes; of the old closure nothing is seen.",
    source="common-practice",
    when=(
        given(
            "nothing closes it, or the snaps are off",
            Trait(place=MATCH.place, slot="kind", word=one_of("none", "snaps")),
        ),
        given("the machine makes buttonholes", Trait(role="bench", slot="buttonholes", word="yes")),
    ),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
            trait("front.kind", "front_opening", "none"),
            trait("bench.buttonholes", "bench", "yes"),
        ),
    ),
    near=(
        near("something closes it, and is too long", name="closure_long"),
        near("a zipper closes it", at=1, word="closed_end"),
        near("it makes none", at=2, word="no"),
    ),
)
