"""Bind a frayed edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Bind a frayed edge",
    problem="edge_frayed",
    fix="hems.fixes.bind_edge",
    why="What is trimmed off is less than what a new hem takes, so the length stays.",
    source="BIASHEM",
    when=(),
    fires=(fires("as found", problem("edge_frayed", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
