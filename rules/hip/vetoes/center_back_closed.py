"""No center-back seam over the seat."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "hip.fixes.center_back",
    "hip.fixes.let_out_center_back",
)


rule = Veto(
    title="No center-back seam over the seat",
    why="A back cut in one piece has no seam there, and one that carries a zipper or a vent cannot give half to each "
    "side.",
    source="common-practice",
    when=(
        given(
            "there is none, or it carries a zipper or a vent",
            Trait(role="lower_part", slot="center_seam", word="closed", place=MATCH.other),
        ),
        such_that("the fix works at the center back", lambda fix: fix in FIXES),
    ),
    says="There is no center-back seam at {other}, or it carries a zipper or a vent: {amount} cannot come from there.",
    fires=(
        fires(
            "no center-back seam over the seat",
            offered("hip_wide", "hip", "hip", "hip.fixes.center_back"),
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("trousers.center_seam", "lower_part", "closed"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.side_seams"),
        near("an ordinary seam", at=2, word="plain"),
    ),
)
