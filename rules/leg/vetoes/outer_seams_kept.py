"""The outer seams should stay."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "leg.fixes.outseams",
    "leg.fixes.both_seams",
    "leg.fixes.let_out_outseams",
    "leg.fixes.let_out_both",
    "leg.fixes.strips",
    "leg.fixes.strips_of_other_cloth",
)


rule = Veto(
    title="The outer seams should stay",
    why="A selvage or a stripe at the outer seam is lost when that seam moves: such legs are narrowed through the "
    "inner seam.",
    source="FITTED",
    when=(
        given("a selvage or a stripe marks them", Trait(role="legs", slot="outseam", word="kept", place=MATCH.other)),
        such_that("the fix works at the outer seams", lambda fix: fix in FIXES),
    ),
    says="The outer leg seams carry a selvage or a stripe that should stay: {amount} has to come from the inner seams.",
    fires=(
        fires(
            "the outer seams should stay",
            offered("leg_wide", "knee", "leg_girth", "leg.fixes.outseams"),
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
            trait("legs.outseam", "legs", "kept"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.inseams"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
