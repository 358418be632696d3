"""Hand-worked buttonholes and a fly for an unclosed opening."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Hand-worked buttonholes and a fly for an unclosed opening",
    problem="closure_missing",
    fix="closure.fixes.buttons_over_fly_by_hand",
    role="front_opening",
    why="An opening from neck to trousers is long for one closure: hand-worked buttonholes for the upper "
    "part, a short zipper for the lower.",
    source="common-practice",
    when=(
        given("nothing closes it", Trait(place=MATCH.place, slot="kind", word="none")),
        given("the opening runs down past the waist", Trait(place=MATCH.place, slot="fly", word="yes")),
        given("the machine makes no buttonholes", Trait(role="bench", slot="buttonholes", word="no")),
    ),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
            trait("front.kind", "front_opening", "none"),
            trait("front.fly", "front_opening", "yes"),
            trait("bench.buttonholes", "bench", "no"),
        ),
    ),
    near=(
        near("something closes it, and is too long", name="closure_long"),
        near("it had snaps, and laps", at=1, word="snaps"),
        near("it ends near the waist", at=2, word="no"),
        near("it makes them", at=3, word="yes"),
    ),
)
