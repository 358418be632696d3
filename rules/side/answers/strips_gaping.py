"""Widen the sides of a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen the sides of a gaping opening",
    problem="gapes",
    fix="side.fixes.side_strips",
    why="The pull that opens it is taken away by new cloth.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
