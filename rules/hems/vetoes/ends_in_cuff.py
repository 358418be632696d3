"""The end carries a cuff and has no hem."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

AT_A_HEM = (
    "hems.fixes.double_fold",
    "hems.fixes.wide_hem",
    "hems.fixes.single_turn",
    "hems.fixes.turn_all_up",
    "hems.fixes.tuck_above_edge",
    "hems.fixes.face_hem",
    "hems.fixes.let_down",
    "hems.fixes.add_band",
)


rule = Veto(
    title="It ends in a cuff",
    why=(
        "With a cuff sewn on there is no hem to turn up or to let down, and a tuck beside it would stand off. The "
        "work goes on between cuff and sleeve."
    ),
    source="common-practice",
    when=(
        given("the end carries a cuff", Trait(place=MATCH.place, role=MATCH.role, slot="finish", word="cuff")),
        such_that("the fix works at a hem", lambda fix: fix in AT_A_HEM),
    ),
    says=(
        "{place} ends in a cuff sewn on: there is no hem to work at. The cuff comes off, and the work goes on above it."
    ),
    fires=(
        fires(
            "a shirt sleeve",
            offered("too_long", "sleeve", "sleeve_end", "hems.fixes.double_fold"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("sleeve.finish", "sleeve_end", "cuff"),
        ),
    ),
    near=(
        near("the cuff itself is moved", at=0, fix="hems.fixes.cuff_again"),
        near("it ends in a hem", at=2, word="hem"),
        near("the cuff is at the other end", at=2, place="leg", role="leg_end"),
    ),
)
