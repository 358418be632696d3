"""Strips in the side seams answer a waist that is too narrow."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Widen a waist with strips",
    problem="too_narrow",
    fix="girth.fixes.side_strips",
    why="Where the seams hold nothing to let out, new cloth must go in; at the sides it looks meant.",
    source="NARELLE",
    when=(),
    fires=(fires("1 in too narrow", problem("too_narrow", "trousers", "lower_part", "girth", "1 in")),),
    near=(near("too wide instead", name="too_wide"),),
)
