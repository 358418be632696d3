"""Leave a loose collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a loose collar",
    problem="collar_loose",
    fix="general.fixes.leave",
    why=(
        "Worn open, or under a scarf, nobody sees it; and new cotton draws up by as much as 1/2 in in the "
        "collar when it is washed."
    ),
    source="SHIRTBOOK-SIZE",
    when=(),
    fires=(fires("leave a loose collar", problem("collar_loose", "collar", "collar", "closure", "3/8 in")),),
    near=(near("another problem", name="collar_tight"),),
)
