"""Turn a long end once."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a long end once",
    problem="too_long",
    fix="hems.fixes.single_turn",
    why="The end is cut where one turn brings it to the length that is wanted, flatter than two.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"),),
)
