"""Let out the sides of a narrower upper part."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let out the sides of a narrower upper part",
    problem="narrower",
    fix="edges.fixes.let_out_upper_sides",
    why="The side seams give the width that is wanting, as far as their allowances hold it.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too narrow", problem("narrower", "bodice", "upper_part", "join", "1/2 in")),),
    near=(near("it is wider", name="wider"),),
)
