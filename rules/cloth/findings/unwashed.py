"""It has not been washed since it came."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Not washed yet",
    problem="unwashed",
    stage="open",
    why=(
        "Cloth that has not been washed the way it will be washed may still shrink: garments have lost 1 1/2 in after "
        "the first wash. What is measured and cut before it comes out too short, and iron and steam set the dirt."
    ),
    source="IKAT",
    when=(
        given(
            "it has not been washed as it will be",
            Trait(role="cloth", place=MATCH.place, slot="washed", word="no"),
        ),
    ),
    says="It has not been washed as it will be washed: its measures may change, and with them every number here.",
    fires=(fires("straight from the rail", trait("cloth.washed", "cloth", "no")),),
    near=(near("washed", word="yes"), near("another thing not known of it", slot="spare")),
)
