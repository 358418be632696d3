"""Hooks above a short zipper."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Hooks above a short zipper",
    problem="closure_short",
    fix="closure.fixes.hooks_at_top",
    role="front_opening",
    why="A short rest at the top is closed by hand in a quarter of an hour, and the zipper is not touched.",
    source="common-practice",
    when=(given("a zipper closes it", Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating"))),),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "closed_end"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("snaps close it", at=1, word="snaps"),
    ),
)
