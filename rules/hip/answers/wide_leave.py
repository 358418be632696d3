"""Leave a wide hip."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a wide hip",
    problem="hip_wide",
    fix="general.fixes.leave",
    why="Room at the hip is a cut as often as a fault: skirts are called relaxed with 3 to 5 in, and it falls well "
    "in soft cloth.",
    source="MOTLEY",
    when=(),
    fires=(
        fires(
            "2 in too wide",
            problem("hip_wide", "hip", "hip", "level", "2 in"),
        ),
    ),
    near=(near("too narrow instead", name="hip_narrow"),),
)
