"""Tack a waist cord."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tack a waist cord",
    problem="cord_at_waist",
    fix="cloth.fixes.tack_cord",
    why="Short and sewn down at center back a waist cord is allowed.",
    source="CPSC-DRAW",
    when=(),
    fires=(fires("tack a waist cord", problem("cord_at_waist", "cloth", "cloth", "open")),),
    near=(near("another problem", name="cord_at_neck"),),
)
