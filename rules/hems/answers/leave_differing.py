"""Leave the two sides as they differ."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave the two sides as they differ",
    problem="sides_differ",
    fix="general.fixes.leave",
    why="Hemmed by one amount the two differ as they did before, which few will see in wear.",
    source="common-practice",
    when=(),
    fires=(fires("two that differ", problem("sides_differ", "leg", "leg_end", "hem")),),
    near=(near("too long, both alike", name="too_long"),),
)
