"""Leave buttonholes where they are."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave buttonholes where they are",
    problem="hole_near_edge",
    fix="general.fixes.leave",
    role="front_opening",
    why="A cut hole cannot be moved; a smaller button or a thread shank set further in does something for it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "holes 1/8 in off",
            problem("hole_near_edge", "front", "front_opening", "closure", "1/8 in"),
        ),
    ),
    near=(near("it is how long the holes are", name="hole_misfits"),),
)
