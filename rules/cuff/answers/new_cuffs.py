"""Make new cuffs."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make new cuffs",
    problem="cuff_worn",
    fix="cuff.fixes.new_cuffs",
    why="The worn pieces go and sound ones come.",
    source="common-practice",
    when=(),
    fires=(fires("make new cuffs", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
