"""Let the hem of a short end down."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let the hem of a short end down",
    problem="too_short",
    fix="hems.fixes.let_down",
    why="The length that is wanting is folded up in the hem already.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(near("too long", name="too_long"),),
)
