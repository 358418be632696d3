"""Turn a narrow hem up on a long skirt."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a narrow hem up on a long skirt",
    problem="too_long",
    fix="hems.fixes.narrow_hem",
    role="skirt_end",
    why="Where an edge flares much, or the cloth is sheer, a narrow hem is the one that lies flat.",
    source="OSU-L87",
    when=(),
    fires=(fires("3 in too long", problem("too_long", "edge", "skirt_end", "hem", "3 in")),),
    near=(near("too short", name="too_short"), near("the end of a leg", place="leg", role="leg_end")),
)
