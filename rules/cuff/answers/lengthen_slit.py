"""Make a short slit longer."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make a short slit longer",
    problem="slit_short",
    fix="cuff.fixes.lengthen_slit",
    why="What the slit lost with the sleeve it gets back at its upper end.",
    source="common-practice",
    when=(),
    fires=(fires("make a short slit longer", problem("slit_short", "cuff", "cuff", "finish", "1/2 in")),),
    near=(near("another problem", name="too_long"),),
)
