"""Felled outer leg seams."""

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
    title="Felled outer leg seams",
    why="Felled outer seams run on into the hip and under the pockets; opened part of the way their topstitching "
    "cannot be joined unseen.",
    source="common-practice",
    when=(
        given("the outer seams are felled", Trait(role="legs", slot="outseam", word="felled", place=MATCH.other)),
        such_that("the fix works at the outer seams", lambda fix: fix in FIXES),
    ),
    says="The outer leg seams are felled up to the hip: {amount} is better moved at the inner seams.",
    fires=(
        fires(
            "felled outer leg seams",
            offered("leg_wide", "knee", "leg_girth", "leg.fixes.outseams"),
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
            trait("legs.outseam", "legs", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.inseams"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
