"""Cut wide shoulders in at the armhole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Cut wide shoulders in at the armhole",
    problem="shoulder_wide",
    fix="shoulder.fixes.move_armhole",
    why="The seam comes to the bone, and neck, yoke and side seams stay as they are.",
    source="WSU-EM2246",
    when=(),
    fires=(
        fires(
            "cut wide shoulders in at the armhole", problem("shoulder_wide", "shoulder", "shoulder", "girth", "1/2 in")
        ),
    ),
    near=(near("another problem", name="shoulder_narrow"),),
)
