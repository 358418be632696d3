"""Press what is due."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Press what is due",
    problem="press_due",
    fix="finish.fixes.press_it",
    why="It was sewn and only has to be pressed.",
    source="common-practice",
    when=(),
    fires=(fires("press what is due", problem("press_due", "trousers", "lower_part", "finish")),),
    near=(near("another problem", name="seam_left_open"),),
)
