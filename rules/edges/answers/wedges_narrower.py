"""Set wedges into a narrower upper part."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set wedges into a narrower upper part",
    problem="narrower",
    fix="edges.fixes.wedges",
    why="New cloth gives the width that the seams do not hold.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too narrow", problem("narrower", "bodice", "upper_part", "join", "1/2 in")),),
    near=(near("it is wider", name="wider"),),
)
