"""A band below the waist answers a short trunk."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lengthen the trunk with a band below the waist",
    problem="trunk_short",
    fix="trunk.fixes.rise_band",
    why="A band set in all round counts twice in the loop, in front and behind, so half of what is lacking is enough; "
    "the waist of the garment stays at the waist of the body.",
    source="common-practice",
    when=(),
    fires=(fires("2 in short", problem("trunk_short", "trunk", "trunk", "girth", "2 in")),),
    near=(near("another problem", name="too_wide"),),
)
