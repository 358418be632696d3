"""Left and right ask for different amounts."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Left and right differ",
    problem="sides_differ",
    stage="hem",
    why=(
        "Bodies are not even, and neither are old hems. Up to 1/4 in the middle serves both; past that one amount "
        "for both sides makes one of them wrong."
    ),
    source="common-practice",
    when=(
        given(
            "left and right ask for different amounts",
            Trait(place=MATCH.place, role=MATCH.role, slot="sides", word="differ"),
        ),
    ),
    says="Left and right of {place} differ by more than 1/4 in: one amount for both would be wrong for one of them.",
    fires=(
        fires("two legs", trait("leg.sides", "leg_end", "differ")),
        fires("two sleeves", trait("sleeve.sides", "sleeve_end", "differ")),
    ),
    near=(
        near("within 1/4 in", word="alike"),
        near("measured apart by now", word="apart"),
    ),
)
