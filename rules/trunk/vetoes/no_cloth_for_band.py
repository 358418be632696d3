"""No matching cloth for a band below the waist."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for the band",
    fix="trunk.fixes.rise_band",
    why="A band all round the hips is seen; in another cloth it is a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.cloth)),),
    reckons={"depth": lambda amount: amount / 2},
    says="There is no matching cloth to hand for a band {depth} deep. A gusset in the crotch may be of another cloth, "
    "for it is hardly seen.",
    fires=(
        fires(
            "nothing to hand",
            offered("trunk_short", "trunk", "trunk", "trunk.fixes.rise_band"),
            problem("trunk_short", "trunk", "trunk", "girth", "2 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="trunk.fixes.gusset"),
        near("there is cloth", at=2, word="yes"),
    ),
)
