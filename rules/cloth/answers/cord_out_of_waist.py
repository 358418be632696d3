"""Cord out of the waist."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Cord out of the waist",
    problem="cord_at_waist",
    fix="cloth.fixes.cord_out",
    why="Without a cord nothing can catch.",
    source="TUKES",
    when=(),
    fires=(fires("cord out of the waist", problem("cord_at_waist", "cloth", "cloth", "open")),),
    near=(near("another problem", name="cord_at_neck"),),
)
