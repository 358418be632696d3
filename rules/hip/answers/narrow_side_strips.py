"""Widen a narrow hip with strips."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen a narrow hip with strips",
    problem="hip_narrow",
    fix="hip.fixes.side_strips",
    why="Where the seams hold nothing, new cloth goes in down both sides, in the cloth of the garment.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="hip_wide"),),
)
