"""Snaps for an opening without a closure."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Snaps for an opening without a closure",
    problem="closure_missing",
    fix="closure.fixes.new_snaps",
    role="front_opening",
    why="Snaps go in quickly and can be set to any length.",
    source="common-practice",
    when=(
        given(
            "nothing closes it, or the snaps are off",
            Trait(place=MATCH.place, slot="kind", word=one_of("none", "snaps")),
        ),
    ),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
            trait("front.kind", "front_opening", "none"),
        ),
    ),
    near=(
        near("something closes it, and is too long", name="closure_long"),
        near("a zipper closes it", at=1, word="closed_end"),
    ),
)
