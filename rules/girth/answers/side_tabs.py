"""Tabs at the sides answer a waist that is too wide."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Draw a wide waist in with tabs",
    problem="too_wide",
    fix="girth.fixes.side_tabs",
    why="Tabs draw in what is loose today and may be undone tomorrow; no seam is touched.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "1 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
