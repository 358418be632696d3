"""Set strips into a narrow leg."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set strips into a narrow leg",
    problem="leg_narrow",
    fix="leg.fixes.strips",
    why="Where the seams hold nothing, a strip down the outer seam gives what is wanted.",
    source="GREENIE",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="leg_wide"),),
)
