"""Leave a narrow leg."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a narrow leg",
    problem="leg_narrow",
    fix="general.fixes.leave",
    why="Tight by more than the seams give, a thigh is not worth the work: leave it on the rack, or pass it on to "
    "someone it fits.",
    source="from-memory",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="leg_wide"),),
)
