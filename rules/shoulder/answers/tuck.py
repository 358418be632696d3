"""Tuck wide shoulders in."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tuck wide shoulders in",
    problem="shoulder_wide",
    fix="shoulder.fixes.tuck",
    why="The tuck brings the seam to the bone and leaves the armhole as it was made.",
    source="common-practice",
    when=(),
    fires=(fires("tuck wide shoulders in", problem("shoulder_wide", "shoulder", "shoulder", "girth", "1/2 in")),),
    near=(near("another problem", name="shoulder_narrow"),),
)
