"""Sew an open seam."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew an open seam",
    problem="seam_left_open",
    fix="finish.fixes.sew_shut",
    why="It was opened for other work and only has to be sewn.",
    source="common-practice",
    when=(),
    fires=(fires("sew an open seam", problem("seam_left_open", "trousers", "lower_part", "finish")),),
    near=(near("another problem", name="press_due"),),
)
