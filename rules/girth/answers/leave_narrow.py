"""A narrow waist may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a narrow waist",
    problem="too_narrow",
    fix="general.fixes.leave",
    why="A little tightness gives with wear in a soft cloth. Where nothing can be let out and no cloth matches, it is "
    "not worth the work: pass it on to someone it fits.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too narrow", problem("too_narrow", "trousers", "lower_part", "girth", "1/2 in")),),
    near=(near("too wide instead", name="too_wide"),),
)
