"""A hand-worked hidden placket for an unclosed opening."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="A hand-worked hidden placket for an unclosed opening",
    problem="closure_missing",
    fix="closure.fixes.hidden_placket_by_hand",
    role="front_opening",
    why="The strips finish the edges, make the lap and carry the holes, which are worked by hand where "
    "nobody sees them.",
    source="common-practice",
    when=(
        given(
            "nothing closes it, or the snaps are off",
            Trait(place=MATCH.place, slot="kind", word=one_of("none", "snaps")),
        ),
        given("the machine makes no buttonholes", Trait(role="bench", slot="buttonholes", word="no")),
    ),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
            trait("front.kind", "front_opening", "none"),
            trait("bench.buttonholes", "bench", "no"),
        ),
    ),
    near=(
        near("something closes it, and is too long", name="closure_long"),
        near("a zipper closes it", at=1, word="closed_end"),
        near("it makes them", at=2, word="yes"),
    ),
)
