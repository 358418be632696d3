"""Leave it short."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it short",
    problem="too_short",
    fix="general.fixes.leave",
    why="An end that is a little short may be pushed up or turned back to look meant.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(near("too long", name="too_long"),),
)
