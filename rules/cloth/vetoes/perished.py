"""Perished cloth is not worth starting on."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, such_that, trait

OPEN = (
    "general.fixes.leave",
    "cloth.fixes.hand_over",
    "cloth.fixes.copy_new",
    "cloth.fixes.air_outdoors",
    "cloth.fixes.bag_and_ask",
    "cloth.fixes.launder_oil",
    "cloth.fixes.cord_out",
)

rule = Veto(
    title="No work on perished cloth",
    why=(
        "Every new seam needs cloth that holds it, and this cloth tears beside it. The hours are better spent on a "
        "copy."
    ),
    source="NEWDRESS-31",
    when=(
        given("the cloth tears or powders", Trait(role="cloth", slot="strength", word="perished")),
        such_that("it would be sewn, washed or pulled", lambda fix: fix not in OPEN),
    ),
    says="The cloth tears or powders when it is pulled: it would tear beside every new seam.",
    fires=(
        fires(
            "a waist raised in cloth that powders",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "1 in"),
            trait("cloth.strength", "cloth", "perished"),
        ),
    ),
    near=(
        near("it is left as it is", at=0, fix="general.fixes.leave"),
        near("it is copied", at=0, fix="cloth.fixes.copy_new"),
        near("thin cloth can be strengthened", at=2, word="thin"),
    ),
)
