"""Let wedges into the sides."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let wedges into the sides",
    problem="stride_short",
    fix="vent.fixes.godets",
    why="A wedge in each side seam gives the step and keeps the leg covered.",
    source="BUMBLE",
    when=(),
    fires=(
        fires(
            "6 in wanting",
            problem("stride_short", "vent", "vent", "finish", "6 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
