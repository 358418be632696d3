"""Leave a loop off."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a loop off",
    problem="loop_off",
    fix="general.fixes.leave",
    why="Without a belt nobody misses one; a hole in the cloth wants closing all the same, or it runs.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("loop_off", "band", "waistband", "finish")),),
    near=(near("another problem", name="press_due"),),
)
