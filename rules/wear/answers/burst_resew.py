"""Sew a burst seam again."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Sew a burst seam again",
    problem="seam_burst",
    fix="wear.fixes.resew",
    why="Where the cloth is whole only the thread is new, and the seam is as strong as it ever was.",
    source="common-practice",
    when=(
        given("the cloth beside it is whole", Trait(role="worn_place", slot="burst", word="burst", place=MATCH.place)),
    ),
    fires=(
        fires(
            "a burst seam",
            problem("seam_burst", "worn", "worn_place", "mend"),
            trait("worn.burst", "worn_place", "burst"),
        ),
    ),
    near=(
        near("a hole instead", name="worn_through"),
        near("it is torn", at=1, word="torn"),
    ),
)
