"""Widen a narrow hip with a stripe of another cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen a narrow hip with a stripe of another cloth",
    problem="hip_narrow",
    fix="hip.fixes.side_strips_of_other_cloth",
    why="Width that neither seams nor matching cloth give comes from a stripe that is meant to be seen.",
    source="GREENIE",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="hip_wide"),),
)
