"""Set other cloth into a narrower upper part."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set other cloth into a narrower upper part",
    problem="narrower",
    fix="edges.fixes.wedges_of_other_cloth",
    why="Width that neither seams nor matching cloth can give comes from a cloth that is meant to be seen.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too narrow", problem("narrower", "bodice", "upper_part", "join", "1/2 in")),),
    near=(near("it is wider", name="wider"),),
)
