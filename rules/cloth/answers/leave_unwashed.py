"""Leave it unwashed."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it unwashed",
    problem="unwashed",
    fix="general.fixes.leave",
    why="A piece that is clean and never will be washed keeps the measures it has.",
    source="common-practice",
    when=(),
    fires=(fires("leave it unwashed", problem("unwashed", "cloth", "cloth", "open")),),
    near=(near("another problem", name="thin"),),
)
