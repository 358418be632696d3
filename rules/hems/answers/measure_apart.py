"""Measure the two sides apart."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Measure the two sides apart",
    problem="sides_differ",
    fix="hems.fixes.measure_apart",
    why="Each side comes out right when each has its own amount.",
    source="TM227-34",
    when=(),
    fires=(fires("two that differ", problem("sides_differ", "leg", "leg_end", "hem")),),
    near=(near("too long, both alike", name="too_long"),),
)
