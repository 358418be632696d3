"""Leave holes in an edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave holes in an edge",
    problem="edge_holed",
    fix="general.fixes.leave",
    role="front_opening",
    why="On the lower of two laps the holes are out of sight; they still tear further.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "holes in the edge",
            problem("edge_holed", "front", "front_opening", "finish"),
        ),
    ),
    near=(near("raw edges, not holes", name="edge_bare"),),
)
