"""The edge is loose: more room is no cure."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

GIVES_ROOM = (
    "side.fixes.let_out",
    "side.fixes.side_strips",
)


rule = Veto(
    title="The edge is loose, not tight",
    why=(
        "An opening that stands open when it is empty is not pulled open. Room beside it leaves its edge as loose "
        "as it was."
    ),
    source="common-practice",
    when=(
        given(
            "it stands open when it is empty", Trait(place=MATCH.place, role="side_opening", slot="flat", word="open")
        ),
        such_that("the fix gives room beside it", lambda fix: fix in GIVES_ROOM),
    ),
    says="{place} stand open lying flat too: the edge is loose, and more room beside it would leave it as loose.",
    fires=(
        fires(
            "a stretched edge",
            offered("gapes", "side_opening", "side_opening", "side.fixes.let_out"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("side_opening.flat", "side_opening", "open"),
        ),
    ),
    near=(
        near("a closing", at=0, fix="side.fixes.stay_tape"),
        near("the body pulls it open", at=2, word="shut"),
    ),
)
