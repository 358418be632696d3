"""Narrow a wide leg at the outer seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Narrow a wide leg at the outer seams",
    problem="leg_wide",
    fix="leg.fixes.outseams",
    why="On trousers whose inner seams are felled the outer seam is the one that opens easily.",
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
