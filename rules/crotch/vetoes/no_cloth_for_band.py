"""No matching cloth for a band below the waistband."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for a band below the waistband",
    fix="crotch.fixes.rise_band",
    why="A band all round the hips is seen; in another cloth it is a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.other)),),
    says="There is no matching cloth to hand for a band {amount} deep.",
    fires=(
        fires(
            "no matching cloth for a band below the waistband",
            offered("crotch_high", "crotch", "crotch", "crotch.fixes.rise_band"),
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="crotch.fixes.gusset"),
        near("there is cloth", at=2, word="yes"),
    ),
)
