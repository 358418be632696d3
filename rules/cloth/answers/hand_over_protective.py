"""Hand over protective clothing."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hand over protective clothing",
    problem="protective",
    fix="cloth.fixes.hand_over",
    why=(
        "What protects is not altered outside the maker: those who answer for it decide, and can mend it so that it "
        "still protects."
    ),
    source="NFPA2113",
    when=(),
    fires=(fires("hand over protective clothing", problem("protective", "cloth", "cloth", "open")),),
    near=(near("another problem", name="perished"),),
)
