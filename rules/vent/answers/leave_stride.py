"""Leave a narrow step."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a narrow step",
    problem="stride_short",
    fix="general.fixes.leave",
    why="A part that only stands and pours tea needs no step; try the stair to the stage in it first.",
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
