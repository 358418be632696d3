"""Ease the lower edge onto a narrower upper."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Ease the lower edge onto a narrower upper",
    problem="narrower",
    fix="edges.fixes.ease_onto_upper",
    why="A difference of 1/2 in or less is eased in from below, and no other seam is opened.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too narrow", problem("narrower", "bodice", "upper_part", "join", "1/2 in")),),
    near=(near("it is wider", name="wider"),),
)
