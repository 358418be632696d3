"""Felled inner leg seams."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "leg.fixes.both_seams",
    "leg.fixes.let_out_inseams",
    "leg.fixes.let_out_both",
)


rule = Veto(
    title="Felled inner leg seams",
    why="A felled seam holds no allowance on one layer, and to open both kinds of seam on both legs is to make the "
    "trousers anew.",
    source="common-practice",
    when=(
        given("the inner seams are felled", Trait(role="legs", slot="inseam", word="felled", place=MATCH.other)),
        such_that("the fix needs them to be ordinary", lambda fix: fix in FIXES),
    ),
    says="The inner leg seams are felled: {amount} is not moved there beside another seam, nor let out.",
    fires=(
        fires(
            "felled inner leg seams",
            offered("leg_wide", "knee", "leg_girth", "leg.fixes.both_seams"),
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
            trait("legs.inseam", "legs", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.outseams"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
