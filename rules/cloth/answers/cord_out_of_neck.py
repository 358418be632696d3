"""Cord out of the neck."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Cord out of the neck",
    problem="cord_at_neck",
    fix="cloth.fixes.cord_out",
    why="No cord may stay at a hood or neck; the opening is held another way.",
    source="TUKES",
    when=(),
    fires=(fires("cord out of the neck", problem("cord_at_neck", "cloth", "cloth", "open")),),
    near=(near("another problem", name="cord_at_waist"),),
)
