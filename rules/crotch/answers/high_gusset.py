"""Let a gusset in under a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a gusset in under a high crotch",
    problem="crotch_high",
    fix="crotch.fixes.gusset",
    why="New cloth goes in where the seam binds; waist, legs and opening stay as they are.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1/2 in too high",
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("too low instead", name="crotch_low"),),
)
