"""Letting out answers a waist that is too narrow."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow waist out",
    problem="too_narrow",
    fix="girth.fixes.let_out",
    why="The center-back seam of trousers is where makers leave cloth for this, if they leave it anywhere.",
    source="SCL",
    when=(),
    fires=(fires("1 in too narrow", problem("too_narrow", "trousers", "lower_part", "girth", "1 in")),),
    near=(near("too wide instead", name="too_wide"),),
)
