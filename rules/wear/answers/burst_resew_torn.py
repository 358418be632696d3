"""Strengthen and sew a torn seam again."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Strengthen and sew a torn seam again",
    problem="seam_burst",
    fix="wear.fixes.resew_taped",
    why="Frayed edges hold no stitch: strips behind them carry the new seam.",
    source="common-practice",
    when=(
        given("the cloth beside it is torn", Trait(role="worn_place", slot="burst", word="torn", place=MATCH.place)),
    ),
    fires=(
        fires(
            "a burst seam",
            problem("seam_burst", "worn", "worn_place", "mend"),
            trait("worn.burst", "worn_place", "torn"),
        ),
    ),
    near=(
        near("a hole instead", name="worn_through"),
        near("it is whole", at=1, word="burst"),
    ),
)
