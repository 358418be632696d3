"""Leave protective clothing as it is."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave protective clothing as it is",
    problem="protective",
    fix="general.fixes.leave",
    why=(
        "Unaltered it keeps the protection it was made with, if it fits the wearer; one that is much too large or too "
        "small does not protect."
    ),
    source="ISHN",
    when=(),
    fires=(fires("leave protective clothing as it is", problem("protective", "cloth", "cloth", "open")),),
    near=(near("another problem", name="perished"),),
)
