"""Snap a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Snap a gaping opening",
    problem="gapes",
    fix="side.fixes.snap",
    why="The edges are held together where they stand widest apart, and open at a pull.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
