"""Take in the sides of a wider upper part."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take in the sides of a wider upper part",
    problem="wider",
    fix="edges.fixes.take_in_upper_sides",
    why="The part above is made as narrow at the waist as the part it joins, without a fold to be seen.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too wide", problem("wider", "bodice", "upper_part", "join", "2 in")),),
    near=(near("it is narrower", name="narrower"),),
)
