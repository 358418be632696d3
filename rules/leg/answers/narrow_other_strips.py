"""Set stripes of another cloth into a narrow leg."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set stripes of another cloth into a narrow leg",
    problem="leg_narrow",
    fix="leg.fixes.strips_of_other_cloth",
    why="A stripe down the leg is worn on uniforms: nobody asks what it is for.",
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
