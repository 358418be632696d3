"""Soaked with oil."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Soaked with oil",
    problem="oil_soaked",
    stage="open",
    why=(
        "Drying oils warm up as they dry: a heap of cotton soaked with them can catch fire by itself, and so can a "
        "dryer. The oil cannot stay in it."
    ),
    source="FD-CORV",
    when=(given("it is soaked with oil", Trait(role="cloth", place=MATCH.place, slot="store", word="oily")),),
    says="It is soaked with oil: in a heap, a dryer or under an iron it can catch fire.",
    fires=(fires("from a garage", trait("cloth.store", "cloth", "oily")),),
    near=(near("clean and dry", word="clean"), near("another thing known of the cloth", slot="washed")),
)
