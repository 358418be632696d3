"""No matching cloth for a band at the waist."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for the band",
    fix="waist.fixes.inset_band",
    why="A band all round the waist is seen; in another cloth it is a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.cloth)),),
    says="There is no matching cloth to hand for a band {amount} deep. A belt's width in a contrast cloth is a design "
    "you would have to want.",
    fires=(
        fires(
            "nothing to hand",
            offered("waist_high", "bodice", "upper_part", "waist.fixes.inset_band"),
            problem("waist_high", "bodice", "upper_part", "level", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="waist.fixes.let_down_seam"),
        near("there is cloth", at=2, word="yes"),
    ),
)
