"""Tape a frayed edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tape a frayed edge",
    problem="edge_frayed",
    fix="hems.fixes.kick_tape",
    why="The fold alone is worn, and the tape takes over what wore it.",
    source="KICKTAPE",
    when=(),
    fires=(fires("as found", problem("edge_frayed", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
