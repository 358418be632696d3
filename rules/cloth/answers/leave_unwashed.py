"""Leave it unwashed."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it unwashed",
    problem="unwashed",
    fix="general.fixes.leave",
    why="A piece that never will be washed keeps the measures it has; one that cannot be washed yet is not cut yet.",
    source="common-practice",
    when=(),
    fires=(fires("leave it unwashed", problem("unwashed", "cloth", "cloth", "open")),),
    near=(near("another problem", name="thin"),),
)
