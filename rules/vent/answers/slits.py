"""Open slits at the sides."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Open slits at the sides",
    problem="stride_short",
    fix="vent.fixes.slits",
    why="The side seams are there already; opened from the edge up they give the step without a cut.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "6 in wanting",
            problem("stride_short", "vent", "vent", "finish", "6 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
