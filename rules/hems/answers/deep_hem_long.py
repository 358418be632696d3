"""Turn a hem of 2 1/2 in up on a long skirt."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a hem of 2 1/2 in up on a long skirt",
    problem="too_long",
    fix="hems.fixes.deep_hem",
    role="skirt_end",
    why="A straight skirt is cut where a deep hem brings it to the length that is wanted, and keeps something to let "
    "down.",
    source="TX-L359",
    when=(),
    fires=(fires("3 in too long", problem("too_long", "edge", "skirt_end", "hem", "3 in")),),
    near=(near("too short", name="too_short"), near("the end of a leg", place="leg", role="leg_end")),
)
