"""Draw a wide back in with a tab."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Draw a wide back in with a tab",
    problem="body_wide",
    fix="body.fixes.back_tab",
    why="It is the quick way: the width is drawn together when it is worn and is there again tomorrow.",
    source="common-practice",
    when=(),
    fires=(fires("draw a wide back in with a tab", problem("body_wide", "body", "body_width", "girth", "2 in")),),
    near=(near("another problem", name="body_narrow"),),
)
