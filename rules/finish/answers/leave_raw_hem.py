"""Leave a raw hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a raw hem",
    problem="hem_left_raw",
    fix="general.fixes.leave",
    why="In cloth that does not fray, or for a rag of a costume, a raw edge may be what is wanted.",
    source="common-practice",
    when=(),
    fires=(fires("leave a raw hem", problem("hem_left_raw", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
