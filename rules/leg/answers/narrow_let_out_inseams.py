"""Let a narrow leg out at the inner seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow leg out at the inner seams",
    problem="leg_narrow",
    fix="leg.fixes.let_out_inseams",
    why="The inner seam gives where the thigh binds, and an old line shows least there.",
    source="TM227-34",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="leg_wide"),),
)
