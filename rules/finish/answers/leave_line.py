"""Leave a marked line."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a marked line",
    problem="line_left_marked",
    fix="general.fixes.leave",
    why="A thread mark inside, that nobody sees, may serve the next time.",
    source="common-practice",
    when=(),
    fires=(fires("leave a marked line", problem("line_left_marked", "waist", "waist_seam", "finish")),),
    near=(near("another problem", name="press_due"),),
)
