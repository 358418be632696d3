"""Not cut before it is washed."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, such_that, trait

CUTS = (
    "hems.fixes.double_fold",
    "hems.fixes.wide_hem",
    "hems.fixes.single_turn",
    "hems.fixes.face_hem",
    "hems.fixes.cuff_again",
    "hems.fixes.edge_set_again",
    "hems.fixes.turned_cuff",
    "hems.fixes.deep_hem",
    "hems.fixes.flared_hem",
    "hems.fixes.narrow_hem",
)


rule = Veto(
    title="Not before it is washed",
    why=(
        "Garments have lost 1 1/2 in in the first wash after they were hemmed. What was cut off does not come back; "
        "what is only turned up or tucked can be let down."
    ),
    source="IKAT",
    when=(
        given("it has not been washed as it will be", Trait(role="cloth", slot="washed", word="no")),
        such_that("it is too long, and the fix cuts it off", lambda name, fix: name == "too_long" and fix in CUTS),
    ),
    says=(
        "It has not been washed yet: garments have lost 1 1/2 in in the first wash, and what is cut off now does "
        "not come back."
    ),
    fires=(
        fires(
            "straight from the store",
            offered("too_long", "leg", "leg_end", "hems.fixes.wide_hem"),
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("cloth.washed", "cloth", "no"),
        ),
    ),
    near=(
        near("nothing is cut", at=0, fix="hems.fixes.turn_all_up"),
        near("washed", at=2, word="yes"),
        near("something else is wanting", at=2, slot="spare"),
        near("it is too short", at=0, name="too_short"),
    ),
)
