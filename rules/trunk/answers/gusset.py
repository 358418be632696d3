"""A gusset through the crotch answers a short trunk."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lengthen the trunk with a gusset",
    problem="trunk_short",
    fix="trunk.fixes.gusset",
    why="The loop gains where it is strained, at the crotch; waist, legs and front opening stay as they are.",
    source="common-practice",
    when=(),
    fires=(fires("2 in short", problem("trunk_short", "trunk", "trunk", "girth", "2 in")),),
    near=(near("another problem", name="too_wide"),),
)
