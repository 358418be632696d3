"""The original edge would be lost."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

LOSES_IT = (
    "hems.fixes.double_fold",
    "hems.fixes.wide_hem",
    "hems.fixes.single_turn",
    "hems.fixes.turn_all_up",
    "hems.fixes.face_hem",
    "hems.fixes.let_down",
    "hems.fixes.add_band",
    "hems.fixes.deep_hem",
    "hems.fixes.flared_hem",
    "hems.fixes.narrow_hem",
    "hems.fixes.level_edge",
)


rule = Veto(
    title="The original edge would be lost",
    why=(
        "A worn, faded or ornamented edge cannot be made again: once it is cut off or unpicked the end looks new "
        "against the rest."
    ),
    source="common-practice",
    when=(
        given(
            "the original edge is worth keeping", Trait(place=MATCH.place, role=MATCH.role, slot="finish", word="keep")
        ),
        such_that("the fix cuts it off or unpicks it", lambda fix: fix in LOSES_IT),
    ),
    says="The original edge of {place} is worth keeping, and it would be cut off or unpicked.",
    fires=(
        fires(
            "faded jeans",
            offered("too_long", "leg", "leg_end", "hems.fixes.wide_hem"),
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("leg.finish", "leg_end", "keep"),
        ),
    ),
    near=(
        near("a tuck above it", at=0, fix="hems.fixes.tuck_above_edge"),
        near("a plain hem", at=2, word="hem"),
        near("it is the sleeve that is worth keeping", at=2, place="sleeve", role="sleeve_end"),
    ),
)
