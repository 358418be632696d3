"""Pleat a wider upper edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Pleat a wider upper edge",
    problem="wider",
    fix="edges.fixes.pleat",
    why="Flat folds take the spare width where gathers would stand off and the cloth is too firm to ease.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too wide", problem("wider", "bodice", "upper_part", "join", "2 in")),),
    near=(near("it is narrower", name="narrower"),),
)
