"""Finish a raw hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Finish a raw hem",
    problem="hem_left_raw",
    fix="finish.fixes.finish_hem",
    why="The edge was cut or let down and only has to be sewn.",
    source="common-practice",
    when=(),
    fires=(fires("finish a raw hem", problem("hem_left_raw", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
