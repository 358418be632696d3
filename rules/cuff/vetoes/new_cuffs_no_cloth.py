"""No matching cloth for cuffs."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for cuffs",
    fix="cuff.fixes.new_cuffs",
    why="Cuffs lie beside the sleeves all day: ones that nearly match look like a mistake.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(place=MATCH.cloth, role="cloth", slot="spare", word="no")),),
    says="There is no matching cloth to hand for new cuffs.",
    fires=(
        fires(
            "no matching cloth for cuffs",
            offered("cuff_worn", "cuff", "cuff", "cuff.fixes.new_cuffs"),
            problem("cuff_worn", "cuff", "cuff", "mend"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="cuff.fixes.contrast_cuffs"),
        near("there is cloth", at=2, word="yes"),
    ),
)
