"""Leather and coated cloth are not hemmed by hand."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

BY_HAND = (
    "hems.fixes.deep_hem",
    "hems.fixes.flared_hem",
    "hems.fixes.sew_again_by_hand",
    "hems.fixes.single_turn",
    "hems.fixes.turn_all_up",
    "hems.fixes.wide_hem",
)

rule = Veto(
    title="No hem by hand in leather",
    why="No needle catches a single thread of leather or coated cloth: it goes through, and its hole stays.",
    source="common-practice",
    when=(
        given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated", place=MATCH.other)),
        such_that("the hem is sewn by hand", lambda fix: fix in BY_HAND),
    ),
    says="In leather and coated cloth each stitch of a hem by hand shows, and its hole stays: clip it, never pin or "
    "baste it, and glue it with a leather glue or topstitch it once with a long stitch.",
    fires=(
        fires(
            "a leather leg",
            offered("too_long", "leg", "leg_end", "hems.fixes.wide_hem"),
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("topstitched", at=0, fix="hems.fixes.double_fold"),
        near("cotton", at=2, word="cotton"),
    ),
)
