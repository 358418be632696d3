"""Tape a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tape a gaping opening",
    problem="gapes",
    fix="side.fixes.stay_tape",
    why="A stretched edge is made as short again as it was cut, and lies shut.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
