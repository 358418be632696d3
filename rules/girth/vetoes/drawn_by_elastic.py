"""Elastic draws the waist in."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "girth.fixes.center_back",
    "girth.fixes.center_back_felled",
    "girth.fixes.back_darts",
    "girth.fixes.side_seams",
    "girth.fixes.side_tabs",
    "girth.fixes.elastic_back",
    "girth.fixes.let_out",
    "girth.fixes.let_out_part",
    "girth.fixes.side_strips",
)


rule = Veto(
    title="Elastic draws the waist in",
    why="Where elastic draws the waist in, a seam or a dart moves the cloth in its casing and not what it measures "
    "at rest: that is the elastic's affair.",
    source="common-practice",
    when=(
        given("elastic draws it in", Trait(role="waistband", slot="kind", word="elastic", place=MATCH.other)),
        such_that("the fix moves seams or adds to them", lambda fix: fix in FIXES),
    ),
    says="{other} is drawn in by elastic: at rest it measures what the elastic does, whatever seams take. Change the "
    "elastic by {amount}.",
    fires=(
        fires(
            "elastic draws the waist in",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("band.kind", "waistband", "elastic"),
        ),
    ),
    near=(
        near("other elastic", fix="girth.fixes.change_elastic"),
        near("a band of its own", at=2, word="separate"),
    ),
)
