"""A hem was opened or cut and not finished."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="Hem left raw",
    problem="hem_left_raw",
    stage="finish",
    why="A raw edge frays with the first wash, and a hem that hangs open is stepped into.",
    source="common-practice",
    when=(
        given(
            "a hem is not sewn",
            Trait(
                place=MATCH.place,
                role=MATCH.role,
                slot="hem",
                word=one_of("open", "marked", "raw", "pieced", "turned"),
            ),
        ),
    ),
    says="The hem of {place} is not finished.",
    fires=(
        fires("cut and raw", trait("leg.hem", "leg_end", "raw")),
        fires("let down and still open", trait("sleeve.hem", "sleeve_end", "open")),
    ),
    near=(near("sewn", word="sewn"), near("another state of the same end", slot="tuck")),
)
