"""Leave a wide leg."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a wide leg",
    problem="leg_wide",
    fix="general.fixes.leave",
    why="Widths come and go; a wide leg falls well over a boot, and a clip holds it on a bicycle.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "2 in too wide",
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
        ),
    ),
    near=(near("too narrow instead", name="leg_narrow"),),
)
