"""Hand-worked buttonholes for an unclosed opening."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Hand-worked buttonholes for an unclosed opening",
    problem="closure_missing",
    fix="closure.fixes.buttons_by_hand",
    role="front_opening",
    why="Buttons are spaced to whatever length the opening has; without buttonholes on the machine each "
    "is worked by hand.",
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
