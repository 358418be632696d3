"""Trim and face worn cuffs."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Trim and face worn cuffs",
    problem="cuff_worn",
    fix="cuff.fixes.face",
    why="The worn edge goes, and what is left is edge again.",
    source="common-practice",
    when=(),
    fires=(fires("trim and face worn cuffs", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
