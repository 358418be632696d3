"""Hand-worked buttonholes for a long closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Hand-worked buttonholes for a long closure",
    problem="closure_long",
    fix="closure.fixes.buttons_by_hand",
    role="front_opening",
    why="Buttons are spaced to whatever length the opening has now; without buttonholes on the machine "
    "each is worked by hand.",
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
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("bench.buttonholes", "bench", "no"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("buttons close it already", at=1, word="buttoned"),
        near("it makes them", at=2, word="yes"),
    ),
)
