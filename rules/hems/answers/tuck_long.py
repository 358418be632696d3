"""Take a tuck in a long end."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a tuck in a long end",
    problem="too_long",
    fix="hems.fixes.tuck_above_edge",
    why="What is too long goes into a fold, and the edge stays the old one.",
    source="METTLER",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"),),
)
