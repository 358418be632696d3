"""Narrow a wide leg at both seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Narrow a wide leg at both seams",
    problem="leg_wide",
    fix="leg.fixes.both_seams",
    why="Half at each seam keeps the crease in the middle of the leg, which below the knee it has to be.",
    source="JEANSFIT",
    when=(),
    fires=(
        fires(
            "2 in too wide",
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
        ),
    ),
    near=(near("too narrow instead", name="leg_narrow"),),
)
