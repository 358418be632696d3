"""A casing over the seam answers a low waist without a cut."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hold a low waist up with elastic",
    problem="waist_low",
    fix="waist.fixes.casing",
    why="What is too long above the seam may stay if something holds the seam up at the waist: it blouses over, and "
    "the trunk keeps its length for sitting.",
    source="common-practice",
    when=(),
    fires=(fires("1 1/2 in low", problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in")),),
    near=(near("it sits high", name="waist_high"),),
)
