"""Give a gaping opening room."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Give a gaping opening room",
    problem="gapes",
    fix="side.fixes.let_out",
    why="The pull that opens it is taken away.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
