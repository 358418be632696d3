"""Close a worn hole over a snap."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Close a worn hole over a snap",
    problem="buttonhole_worn",
    fix="stand.fixes.button_on_top",
    why="The hole need not hold any more: it is shut, and a snap closes.",
    source="common-practice",
    when=(),
    fires=(fires("close a worn hole over a snap", problem("buttonhole_worn", "stand", "button_stand", "mend")),),
    near=(near("another problem", name="front_gapes"),),
)
