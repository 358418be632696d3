"""Button a gaping opening."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Button a gaping opening",
    problem="gapes",
    fix="side.fixes.button_and_loop",
    why="The edges are held together where they stand widest apart, by something that may be seen.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
