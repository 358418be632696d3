"""No matching cloth for strips in the legs."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for strips in the legs",
    fix="leg.fixes.strips",
    why="Strips down both legs are seen; in another cloth they are a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.other)),),
    says="There is no matching cloth to hand for two strips that show {amount} each.",
    fires=(
        fires(
            "no matching cloth for strips in the legs",
            offered("leg_narrow", "thigh", "leg_girth", "leg.fixes.strips"),
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.let_out_both"),
        near("there is cloth", at=2, word="yes"),
    ),
)
