"""Let a narrow seat out at center back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow seat out at center back",
    problem="hip_narrow",
    fix="hip.fixes.let_out_center_back",
    why="The seat seam of trousers is where makers leave cloth, if anywhere; it gives where the strain is.",
    source="SCL",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="hip_wide"),),
)
