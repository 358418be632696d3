"""Take a wide back in with a pleat."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a wide back in with a pleat",
    problem="body_wide",
    fix="body.fixes.back_pleat",
    why="The whole amount goes into one fold at the center back, and can come out again.",
    source="common-practice",
    when=(),
    fires=(fires("take a wide back in with a pleat", problem("body_wide", "body", "body_width", "girth", "2 in")),),
    near=(near("another problem", name="body_narrow"),),
)
