"""Widen it over the hips."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen it over the hips",
    problem="body_narrow",
    fix="body.fixes.hip_gussets",
    why="It is tight below the waist only, and a gusset gives there only.",
    source="common-practice",
    when=(),
    fires=(fires("widen it over the hips", problem("body_narrow", "body", "body_width", "girth", "1 in")),),
    near=(near("another problem", name="body_wide"),),
)
