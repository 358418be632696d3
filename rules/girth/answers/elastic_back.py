"""Elastic in a back casing answers a waist that is too wide."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Draw a wide waist in with elastic",
    problem="too_wide",
    fix="girth.fixes.elastic_back",
    why="Elastic draws in what is loose now and lets it out again: for a wearer whose waist changes, or a garment lent "
    "about.",
    source="NORTHBY",
    when=(),
    fires=(fires("2 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "2 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
