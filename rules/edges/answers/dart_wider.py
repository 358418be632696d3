"""Dart a wider upper edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Dart a wider upper edge",
    problem="wider",
    fix="edges.fixes.dart_upper",
    why="The edge loses the spare width exactly, and the part above keeps its room over the chest.",
    source="USDA-FIT13",
    when=(),
    fires=(fires("2 in too wide", problem("wider", "bodice", "upper_part", "join", "2 in")),),
    near=(near("it is narrower", name="narrower"),),
)
