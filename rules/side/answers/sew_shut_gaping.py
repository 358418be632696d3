"""Sew a gaping opening shut."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a gaping opening shut",
    problem="gapes",
    fix="side.fixes.sew_shut",
    why="An opening nobody needs gapes no more when it is a seam.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
