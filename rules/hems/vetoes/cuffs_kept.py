"""A plain hem takes the turned-up cuffs away."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

PLAIN = ("hems.fixes.double_fold", "hems.fixes.single_turn", "hems.fixes.wide_hem")

rule = Veto(
    title="The turned-up cuffs would be lost",
    why="What is there is kept unless somebody wants it gone: a plain hem cuts off the cloth of the cuffs for good.",
    source="common-practice",
    when=(
        given("it has cuffs turned up", Trait(place=MATCH.place, role="leg_end", slot="finish", word="turned")),
        such_that("the hem is plain", lambda fix: fix in PLAIN),
    ),
    says="{place} has cuffs turned up, and a plain hem would take them away for good.",
    fires=(
        fires(
            "trousers with cuffs",
            offered("too_long", "leg", "leg_end", "hems.fixes.wide_hem"),
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("leg.finish", "leg_end", "turned"),
        ),
    ),
    near=(
        near("the cuffs go up again", at=0, fix="hems.fixes.turned_cuff"),
        near("a plain hem", at=2, word="hem"),
    ),
)
