"""Turn a worn collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a worn collar",
    problem="collar_worn",
    fix="collar.fixes.turn",
    why="Only the side that shows is worn, and a collar has another.",
    source="MALECALL",
    when=(),
    fires=(fires("turn a worn collar", problem("collar_worn", "collar", "collar", "mend")),),
    near=(near("another problem", name="collar_tight"),),
)
