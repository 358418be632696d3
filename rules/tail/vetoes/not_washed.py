"""Not cut before it is washed."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, such_that, trait

CUTS = ("tail.fixes.narrow_hem", "tail.fixes.wide_hem", "tail.fixes.level")

rule = Veto(
    title="A tail is not cut before the wash",
    why=(
        "Garments have lost 1 1/2 in in the first wash after they were hemmed, and what was cut off does not come back."
    ),
    source="IKAT",
    when=(
        given("it has not been washed as it will be", Trait(role="cloth", slot="washed", word="no")),
        such_that("the fix cuts cloth off", lambda fix: fix in CUTS),
    ),
    says=(
        "It has not been washed yet: garments have lost 1 1/2 in in the first wash, and what is cut off does "
        "not come back."
    ),
    fires=(
        fires(
            "straight from the store",
            offered("tail_long", "tail", "body_hem", "tail.fixes.narrow_hem"),
            problem("tail_long", "tail", "body_hem", "hem", "2 in"),
            trait("cloth.washed", "cloth", "no"),
        ),
    ),
    near=(
        near("nothing is cut", fix="general.fixes.leave"),
        near("washed", at=2, word="yes"),
        near("something else is wanting", at=2, slot="spare"),
    ),
)
