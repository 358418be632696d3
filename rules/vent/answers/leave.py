"""Leave a short vent."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short vent",
    problem="vent_short",
    fix="general.fixes.leave",
    why="For standing and small steps it will do; bar its top well, for it tears there.",
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
