"""Turn all of a long end up."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn all of a long end up",
    problem="too_long",
    fix="hems.fixes.turn_all_up",
    why="The end comes up to the length that is wanted, and nothing is cut that is wanted again.",
    source="DANCINGTH",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"),),
)
