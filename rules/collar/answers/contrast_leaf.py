"""Make a collar of another cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make a collar of another cloth",
    problem="collar_worn",
    fix="collar.fixes.contrast_leaf",
    why="The worn piece goes, and no matching cloth is needed.",
    source="common-practice",
    when=(),
    fires=(fires("make a collar of another cloth", problem("collar_worn", "collar", "collar", "mend")),),
    near=(near("another problem", name="collar_tight"),),
)
