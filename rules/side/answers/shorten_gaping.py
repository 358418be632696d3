"""Shorten a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Shorten a gaping opening",
    problem="gapes",
    fix="side.fixes.shorten",
    why="The shorter the opening, the less it stands open; what is left of it a hook can hold.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
