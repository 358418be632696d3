"""Raising the seam answers a waist that sits low."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Raise a low waist",
    problem="waist_low",
    fix="waist.fixes.raise_seam",
    why="What is too long above the seam can be cut away below the new line, and the lower part goes up with it.",
    source="common-practice",
    when=(),
    fires=(fires("1 1/2 in low", problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in")),),
    near=(near("it sits high", name="waist_high"),),
)
