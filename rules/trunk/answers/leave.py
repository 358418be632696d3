"""A short trunk may be left where nobody sits or bends in it."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short trunk",
    problem="trunk_short",
    fix="general.fixes.leave",
    why="For standing and posing only: sitting, bending and stairs will pull at shoulder and crotch, and the crotch "
    "seam goes first.",
    source="common-practice",
    when=(),
    fires=(fires("1 in short", problem("trunk_short", "trunk", "trunk", "girth", "1 in")),),
    near=(near("another problem", name="too_wide"),),
)
