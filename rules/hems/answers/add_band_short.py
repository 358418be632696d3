"""Sew a band to a short end."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a band to a short end",
    problem="too_short",
    fix="hems.fixes.add_band",
    why="What the hem does not hold is added below it.",
    source="WILLOW",
    when=(),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(near("too long", name="too_long"),),
)
