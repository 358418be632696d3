"""Leave it gaping."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it gaping",
    problem="gapes",
    fix="general.fixes.leave",
    why="A slit at the side may stand open over something worn beneath that matches.",
    source="common-practice",
    when=(),
    fires=(fires("1 in open", problem("gapes", "side_opening", "side_opening", "closure", "1 in")),),
    near=(near("drawn too far together", name="drawn_too_far"),),
)
