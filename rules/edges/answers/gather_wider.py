"""Gather a wider upper edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Gather a wider upper edge",
    problem="wider",
    fix="edges.fixes.gather",
    why=(
        "The spare width is drawn up into folds that look meant, and the edge comes out as long as the one it is "
        "sewn to."
    ),
    source="USDA-FIT13",
    when=(),
    fires=(fires("2 in too wide", problem("wider", "bodice", "upper_part", "join", "2 in")),),
    near=(near("it is narrower", name="narrower"),),
)
