"""Felled inner seams at the crotch."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "crotch.fixes.let_out_points",
    "crotch.fixes.take_in_points",
)


rule = Veto(
    title="Felled inner seams at the crotch",
    why="Felled inner seams hold no allowance on one layer, and where four of them meet nothing can be folded anew.",
    source="common-practice",
    when=(
        given("the inner seams are felled", Trait(role="legs", slot="inseam", word="felled", place=MATCH.other)),
        such_that("the fix moves them there", lambda fix: fix in FIXES),
    ),
    says="The inner seams are felled, and meet in eight layers at the crotch: {amount} cannot be moved there.",
    fires=(
        fires(
            "felled inner seams at the crotch",
            offered("crotch_low", "crotch", "crotch", "crotch.fixes.take_in_points"),
            problem("crotch_low", "crotch", "crotch", "level", "1/2 in"),
            trait("legs.inseam", "legs", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="crotch.fixes.lift_at_waist"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
