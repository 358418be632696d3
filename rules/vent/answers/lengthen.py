"""Open a short vent further up."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Open a short vent further up",
    problem="vent_short",
    fix="vent.fixes.lengthen",
    why="The seam above it gives what the step asks for; nothing is cut.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "2 in too short",
            problem("vent_short", "vent", "vent", "finish", "2 in"),
        ),
    ),
    near=(near("another problem", name="stride_short"),),
)
