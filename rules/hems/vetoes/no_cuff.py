"""There is no cuff to set again."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, such_that, trait

rule = Veto(
    title="There is no cuff",
    fix="hems.fixes.cuff_again",
    why="Without a cuff this is a hem, and a hem is shorter work.",
    source="common-practice",
    when=(
        given("it is known how it ends", Trait(place=MATCH.place, role=MATCH.role, slot="finish", word=MATCH.finish)),
        such_that("it has no cuff", lambda finish: finish != "cuff"),
    ),
    says="{place} has no cuff to take off and set again.",
    fires=(
        fires(
            "a plain hem",
            offered("too_long", "sleeve", "sleeve_end", "hems.fixes.cuff_again"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("sleeve.finish", "sleeve_end", "hem"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.double_fold"),
        near("a cuff", at=2, word="cuff"),
        near_without("it is not known how it ends", at=2),
    ),
)
