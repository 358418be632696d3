"""Turn a hem of 1 1/2 in up on a long skirt."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a hem of 1 1/2 in up on a long skirt",
    problem="too_long",
    fix="hems.fixes.flared_hem",
    role="skirt_end",
    why="A flared skirt is cut where a hem of 1 1/2 in brings it up: deeper, its fullness would not steam away.",
    source="OSU-L87",
    when=(),
    fires=(fires("3 in too long", problem("too_long", "edge", "skirt_end", "hem", "3 in")),),
    near=(near("too short", name="too_short"), near("the end of a leg", place="leg", role="leg_end")),
)
