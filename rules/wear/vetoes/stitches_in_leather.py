"""Stitches tear leather."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "wear.fixes.patch_under",
    "wear.fixes.patch_over",
    "wear.fixes.darn",
    "wear.fixes.back_thin",
)


rule = Veto(
    title="Stitches tear leather",
    why="Every needle hole stays in leather and coated cloth, and rows of them tear like a perforation.",
    source="LEATHER",
    when=(
        given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated", place=MATCH.other)),
        such_that("the fix sews into it", lambda fix: fix in FIXES),
    ),
    says="In leather and coated cloth every needle hole stays: at a worn place rows of stitches would tear on.",
    fires=(
        fires(
            "stitches tear leather",
            offered("worn_through", "worn", "worn_place", "wear.fixes.patch_under"),
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("glued", fix="wear.fixes.glue_patch"),
        near("cotton", at=2, word="cotton"),
    ),
)
