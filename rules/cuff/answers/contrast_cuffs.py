"""Make cuffs of another cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make cuffs of another cloth",
    problem="cuff_worn",
    fix="cuff.fixes.contrast_cuffs",
    why="The worn pieces go, and no matching cloth is needed.",
    source="common-practice",
    when=(),
    fires=(fires("make cuffs of another cloth", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
