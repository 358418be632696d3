"""Make a new collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make a new collar",
    problem="collar_worn",
    fix="collar.fixes.new_leaf",
    why="The worn piece goes and a sound one comes, whichever side is worn.",
    source="common-practice",
    when=(),
    fires=(fires("make a new collar", problem("collar_worn", "collar", "collar", "mend")),),
    near=(near("another problem", name="collar_tight"),),
)
