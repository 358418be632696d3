"""The lower edge of a skirt hangs unevenly."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Edge that hangs unevenly",
    problem="hem_uneven",
    stage="finish",
    why="Bias and flared cloth drops where it is cut across the grain, and a full seat or a high hip draws an edge "
    "up. Level on the table is not level on the body. A hem that is marked anew is marked level, so this is looked at "
    "last.",
    source="NMSU-C314",
    when=(
        given("the edge hangs lower in places", Trait(role="skirt_end", place=MATCH.place, slot="level", word="drops")),
    ),
    says="The lower edge of {place} does not hang level.",
    fires=(fires("a flared skirt that dropped", trait("edge.level", "skirt_end", "drops")),),
    near=(near("level", word="level"), near("its hem, not its level", slot="hem")),
)
