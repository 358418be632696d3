"""Let a narrow hip out at the side seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow hip out at the side seams",
    problem="hip_narrow",
    fix="hip.fixes.let_out_sides",
    why="Both side seams together give four times what one allowance can spare, front and back alike, so that the "
    "seams stay plumb.",
    source="USDA-FIT14",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="hip_wide"),),
)
