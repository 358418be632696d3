"""Wash what has not been washed."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Wash what has not been washed",
    problem="unwashed",
    fix="cloth.fixes.wash_first",
    why="Washed before it is measured it can no longer shrink away from the numbers.",
    source="IKAT",
    when=(),
    fires=(fires("wash what has not been washed", problem("unwashed", "cloth", "cloth", "open")),),
    near=(near("another problem", name="thin"),),
)
