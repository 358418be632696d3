"""Cuffs worn at their edge."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="Cuffs worn at the edge",
    problem="cuff_worn",
    stage="mend",
    why=(
        "The edge of a cuff rubs on table and tool, and frays while the sleeve is as good as new; every wash "
        "takes more."
    ),
    source="common-practice",
    when=(
        given(
            "the cuffs are worn at the edge",
            Trait(place=MATCH.place, role="cuff", slot="worn", word=one_of("edge", "through")),
        ),
    ),
    says="{place} are worn through at the edge.",
    fires=(fires("the cuffs are worn at the edge", trait("cuff.worn", "cuff", "edge")),),
    near=(near("they are sound", word="sound"),),
)
