"""The opening is needed."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, such_that, trait

rule = Veto(
    title="The opening is needed",
    fix="side.fixes.sew_shut",
    why="An opening that a hand or the hips must pass cannot become a seam.",
    source="common-practice",
    when=(
        given(
            "it is known what the opening is for",
            Trait(place=MATCH.place, role="side_opening", slot="use", word=MATCH.use),
        ),
        such_that("at least half of it is needed", lambda use: use != "idle"),
    ),
    reckons={"needed": lambda use: "half of its length is" if use == "part" else "all of its length is"},
    says="{place} are needed: {needed} used to reach through or to get in.",
    fires=(
        fires(
            "hands go through",
            offered("gapes", "side_opening", "side_opening", "side.fixes.sew_shut"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("side_opening.use", "side_opening", "needed"),
        ),
        fires(
            "half would do",
            offered("gapes", "side_opening", "side_opening", "side.fixes.sew_shut"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("side_opening.use", "side_opening", "part"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="side.fixes.hook_and_bar"),
        near("nobody uses it", at=2, word="idle"),
        near_without("it is not known", at=2),
    ),
)
