"""Pad wide shoulders out."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Pad wide shoulders out",
    problem="shoulder_wide",
    fix="shoulder.fixes.pad",
    why="A little that hangs over may be filled instead of taken off.",
    source="common-practice",
    when=(),
    fires=(fires("pad wide shoulders out", problem("shoulder_wide", "shoulder", "shoulder", "girth", "1/2 in")),),
    near=(near("another problem", name="shoulder_narrow"),),
)
