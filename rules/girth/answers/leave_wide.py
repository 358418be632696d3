"""A wide waist may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a wide waist",
    problem="too_wide",
    fix="general.fixes.leave",
    why="A one-piece hangs from the shoulders, so a loose waist does not fall; a belt may do.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "1/2 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
