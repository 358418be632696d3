"""Widen a narrow body with strips that show."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen a narrow body with strips that show",
    problem="body_narrow",
    fix="body.fixes.side_strips_other",
    why="With no matching cloth to hand the strips may be seen and meant.",
    source="UNFASH",
    when=(),
    fires=(
        fires(
            "widen a narrow body with strips that show", problem("body_narrow", "body", "body_width", "girth", "1 in")
        ),
    ),
    near=(near("another problem", name="body_wide"),),
)
