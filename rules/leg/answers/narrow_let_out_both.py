"""Let a narrow leg out at both seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow leg out at both seams",
    problem="leg_narrow",
    fix="leg.fixes.let_out_both",
    why="Both seams together give twice what one holds, half inside and half outside the leg.",
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
