"""Nothing is done to a garment with unknown dust in it."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, one_of, problem, such_that, trait

OPEN = ("general.fixes.leave", "cloth.fixes.hand_over", "cloth.fixes.bag_and_ask")

rule = Veto(
    title="No work in unknown dust",
    why="Unpicking, brushing, pressing and washing all stir dust up, and asbestos and lead are breathed in unseen.",
    source="OSHA-PB",
    when=(
        given(
            "unknown dust is in the garment",
            Trait(role="cloth", slot="store", word=one_of("dusty", "bagged")),
        ),
        such_that("it would be handled", lambda fix: fix not in OPEN),
    ),
    says="There is unknown dust in it: nothing is done to it until somebody has said what the dust is.",
    fires=(
        fires(
            "a waist raised in dusty work clothes",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "1 in"),
            trait("cloth.store", "cloth", "dusty"),
        ),
    ),
    near=(
        near("it is put in a bag", at=0, fix="cloth.fixes.bag_and_ask"),
        near("it was kept clean", at=2, word="clean"),
    ),
)
