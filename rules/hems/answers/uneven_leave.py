"""Leave an uneven edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave an uneven edge",
    problem="hem_uneven",
    fix="general.fixes.leave",
    why="In a full skirt that moves, about 1 in of difference is seen by nobody but the one who hemmed it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "hangs unevenly",
            problem("hem_uneven", "edge", "skirt_end", "finish"),
        ),
    ),
    near=(near("too long", name="too_long"),),
)
