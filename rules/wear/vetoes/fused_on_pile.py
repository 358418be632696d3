"""Fusing crushes pile and shows on silk."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, such_that, trait

FIXES = (
    "wear.fixes.iron_on",
    "wear.fixes.fuse_stay",
)


rule = Veto(
    title="Fusing crushes pile and shows on silk",
    why="The press that fuses crushes a pile for good, and glue strikes through satin.",
    source="common-practice",
    when=(
        given(
            "the surface is a pile or slippery",
            Trait(role="cloth", slot="surface", word=one_of("pile", "slippery"), place=MATCH.other),
        ),
        such_that("the fix uses an iron", lambda fix: fix in FIXES),
    ),
    says="The press that fuses crushes a pile for good, and glue strikes through satin: sew it instead.",
    fires=(
        fires(
            "fusing crushes pile and shows on silk",
            offered("worn_through", "worn", "worn_place", "wear.fixes.iron_on"),
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("cloth.surface", "cloth", "pile"),
        ),
    ),
    near=(
        near("a fix without heat", fix="wear.fixes.darn"),
        near("plain", at=2, word="plain"),
    ),
)
