"""Leave a long row of fastenings."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Leave a long row of fastenings",
    problem="closure_long",
    fix="general.fixes.leave",
    role="front_opening",
    why="Single fastenings go up with the cloth they sit in; two that stand nearer than the rest still close.",
    source="common-practice",
    when=(given("snaps or buttons close it", Trait(place=MATCH.place, slot="kind", word=one_of("snaps", "buttoned"))),),
    fires=(
        fires(
            "a closure 1 1/2 in too long",
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.kind", "front_opening", "snaps"),
        ),
    ),
    near=(
        near("it is too short", name="closure_short"),
        near("a zipper closes it", at=1, word="closed_end"),
    ),
)
