"""Leave a worn collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a worn collar",
    problem="collar_worn",
    fix="general.fixes.leave",
    why=(
        "Worn open or under a scarf it may do for a poor man's part, and the wear is honest. Each wash opens "
        "it further."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave a worn collar", problem("collar_worn", "collar", "collar", "mend")),),
    near=(near("another problem", name="collar_tight"),),
)
