"""A wide waist may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a wide waist",
    problem="too_wide",
    fix="general.fixes.leave",
    why="What hangs from the shoulders does not fall for a loose waist; trousers and skirts need a belt or braces to "
    "stay up.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "1/2 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
