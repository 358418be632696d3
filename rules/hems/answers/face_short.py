"""Face a short end."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Face a short end",
    problem="too_short",
    fix="hems.fixes.face_hem",
    why="Nearly all of the hem becomes length when a strip takes its place inside.",
    source="SENECA",
    when=(),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(near("too long", name="too_long"),),
)
