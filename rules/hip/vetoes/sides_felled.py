"""Felled side seams over the hip."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FIXES = (
    "hip.fixes.side_seams",
    "hip.fixes.let_out_sides",
    "hip.fixes.side_strips",
    "hip.fixes.side_strips_of_other_cloth",
)


rule = Veto(
    title="Felled side seams over the hip",
    why="Felled and topstitched sides hold no allowance on one layer, and each would have to be felled again along "
    "the whole hip and thigh.",
    source="common-practice",
    when=(
        given(
            "the side seams are felled or topstitched",
            Trait(role="lower_part", slot="side_seam", word="felled", place=MATCH.other),
        ),
        such_that("the fix works at the side seams", lambda fix: fix in FIXES),
    ),
    says="The side seams of {other} are felled or topstitched flat: for {amount} both would have to be opened and "
    "felled again.",
    fires=(
        fires(
            "felled side seams over the hip",
            offered("hip_wide", "hip", "hip", "hip.fixes.side_seams"),
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("trousers.side_seam", "lower_part", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.center_back"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
