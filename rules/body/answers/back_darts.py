"""Take a wide back in with darts."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a wide back in with darts",
    problem="body_wide",
    fix="body.fixes.back_darts",
    why="Where only back or waist stand off, darts take it out just there.",
    source="IKAT",
    when=(),
    fires=(fires("take a wide back in with darts", problem("body_wide", "body", "body_width", "girth", "2 in")),),
    near=(near("another problem", name="body_narrow"),),
)
