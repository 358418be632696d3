"""Turn a long end once."""

from advisor.knowledge import Answer, fires, near, problem, such_that

ENDS = ("sleeve_end", "leg_end")

rule = Answer(
    title="Turn a long end once",
    problem="too_long",
    fix="hems.fixes.single_turn",
    why="The end is cut where one turn brings it to the length that is wanted, flatter than two.",
    source="common-practice",
    when=(such_that("it is the end of a sleeve or of a leg", lambda role: role in ENDS),),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"), near("a skirt", place="edge", role="skirt_end")),
)
