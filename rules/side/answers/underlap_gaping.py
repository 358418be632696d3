"""Back a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Back a gaping opening",
    problem="gapes",
    fix="side.fixes.underlap",
    why="It may stand open, since nothing is seen through it.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
