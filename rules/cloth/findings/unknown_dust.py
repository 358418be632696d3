"""Unknown dust."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Unknown dust",
    problem="unknown_dust",
    stage="open",
    why=(
        "Old work clothes and clothes from old buildings can hold asbestos or lead dust. Shaking, brushing and home "
        "washing spread it through the house: it cannot "
        "be worked on before that is known."
    ),
    source="OSHA-PB",
    when=(given("unknown dust is in it", Trait(role="cloth", place=MATCH.place, slot="store", word="dusty")),),
    says="There is unknown dust in it, which may hold asbestos or lead: do not shake, brush or wash it.",
    fires=(fires("from a closed works", trait("cloth.store", "cloth", "dusty")),),
    near=(near("clean and dry", word="clean"), near("another thing known of the cloth", slot="washed")),
)
