"""Ease a wider upper edge in."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Ease a wider upper edge in",
    problem="wider",
    fix="edges.fixes.ease_in",
    why="A small amount disappears into the seam: nothing shows, and nothing has to be cut.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too wide", problem("wider", "bodice", "upper_part", "join", "2 in")),),
    near=(near("it is narrower", name="narrower"),),
)
