"""Something is set into the side seams."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "hip.fixes.side_seams",
    "hip.fixes.let_out_sides",
    "hip.fixes.side_strips",
    "hip.fixes.side_strips_of_other_cloth",
)


rule = Veto(
    title="Something is set into the side seams",
    why="A pocket mouth or an opening set into the side seam would be cut short, drawn round to the back, or have to "
    "be taken out and set anew.",
    source="common-practice",
    when=(
        given(
            "a pocket or an opening is set into them",
            Trait(role="lower_part", slot="side_seam", word="opening", place=MATCH.other),
        ),
        such_that("the fix works at the side seams", lambda fix: fix in FIXES),
    ),
    says="A pocket or an opening is set into the side seams of {other}: {amount} at the sides would mean taking it "
    "out and setting it anew.",
    fires=(
        fires(
            "something is set into the side seams",
            offered("hip_wide", "hip", "hip", "hip.fixes.side_seams"),
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("trousers.side_seam", "lower_part", "opening"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.center_back"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
