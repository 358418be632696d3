"""The cloth is perished: not worth starting."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Perished cloth",
    problem="perished",
    stage="open",
    why=(
        "Cloth that tears or powders when it is pulled tears beside every new seam. No fix lasts longer than the cloth "
        "it is sewn to, so the hours are lost: it is not worth starting."
    ),
    source="TM201-68",
    when=(
        given("the cloth tears or powders", Trait(role="cloth", place=MATCH.place, slot="strength", word="perished")),
        given("nothing else was decided for it", Trait(place=MATCH.place, role="cloth", slot="fate", word="kept")),
    ),
    says="The cloth tears or powders when it is pulled: it is not worth starting on.",
    fires=(
        fires(
            "a lining that powders",
            trait("cloth.strength", "cloth", "perished"),
            trait("cloth.fate", "cloth", "kept"),
        ),
    ),
    near=(near("only thin", word="thin"), near("its pattern has been taken", at=1, word="copied")),
)
