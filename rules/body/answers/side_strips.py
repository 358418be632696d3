"""Widen a narrow body with strips."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen a narrow body with strips",
    problem="body_narrow",
    fix="body.fixes.side_strips",
    why="Strips give whatever is wanted, at the sides and under the arms, where it strains.",
    source="LEONVPL",
    when=(),
    fires=(fires("widen a narrow body with strips", problem("body_narrow", "body", "body_width", "girth", "1 in")),),
    near=(near("another problem", name="body_wide"),),
)
