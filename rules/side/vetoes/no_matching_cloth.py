"""There is no cloth for the strips."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, such_that, trait

NEEDS = (
    "side.fixes.underlap",
    "side.fixes.side_strips",
)


rule = Veto(
    title="No matching cloth",
    why="A strip at the hip is seen with every step, and cloth of another make shrinks and fades in its own way.",
    source="common-practice",
    when=(
        given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no")),
        such_that("the fix is cut from matching cloth", lambda fix: fix in NEEDS),
    ),
    says="There is no matching cloth to hand to cut the strips from.",
    fires=(
        fires(
            "a strip without cloth",
            offered("gapes", "side_opening", "side_opening", "side.fixes.underlap"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("a fix that needs none", at=0, fix="side.fixes.hook_and_bar"),
        near("cloth to hand", at=2, word="yes"),
        near("something else is wanting", at=2, slot="washed"),
    ),
)
