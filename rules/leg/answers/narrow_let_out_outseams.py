"""Let a narrow leg out at the outer seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow leg out at the outer seams",
    problem="leg_narrow",
    fix="leg.fixes.let_out_outseams",
    why="The outer seam gives along the whole leg what its allowance holds.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="leg_wide"),),
)
