"""Leave it long."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it long",
    problem="too_long",
    fix="general.fixes.leave",
    why="An end that is a little long can be rolled or turned back for one wearer and let down for the next.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"),),
)
