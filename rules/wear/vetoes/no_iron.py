"""No fusing where the label forbids the iron."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "wear.fixes.iron_on",
    "wear.fixes.fuse_stay",
)


rule = Veto(
    title="No fusing where the label forbids the iron",
    why="What is fused is fused with heat that the label forbids.",
    source="GINETEX",
    when=(
        given("the label forbids ironing", Trait(role="cloth", slot="iron", word="no", place=MATCH.other)),
        such_that("the fix uses an iron", lambda fix: fix in FIXES),
    ),
    says="The label shows an iron crossed out: nothing may be fused to it.",
    fires=(
        fires(
            "no fusing where the label forbids the iron",
            offered("worn_through", "worn", "worn_place", "wear.fixes.iron_on"),
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("cloth.iron", "cloth", "no"),
        ),
    ),
    near=(
        near("a fix without heat", fix="wear.fixes.darn"),
        near("two dots", at=2, word="two"),
    ),
)
