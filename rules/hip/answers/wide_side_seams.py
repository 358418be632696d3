"""Take a wide hip in at the side seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a wide hip in at the side seams",
    problem="hip_wide",
    fix="hip.fixes.side_seams",
    why="Side seams run from waist to hip: one line takes both in, half at each side, and what sits at "
    "center back stays.",
    source="IKAT",
    when=(),
    fires=(
        fires(
            "2 in too wide",
            problem("hip_wide", "hip", "hip", "level", "2 in"),
        ),
    ),
    near=(near("too narrow instead", name="hip_narrow"),),
)
