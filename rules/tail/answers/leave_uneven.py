"""Leave an uneven edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave an uneven edge",
    problem="tail_uneven",
    fix="general.fixes.leave",
    why="Tucked in nobody sees it.",
    source="common-practice",
    when=(),
    fires=(fires("leave an uneven edge", problem("tail_uneven", "tail", "body_hem", "hem", "3/4 in")),),
    near=(near("another problem", name="tail_long"),),
)
