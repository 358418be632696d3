"""Leave it unpressed."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave it unpressed",
    problem="press_due",
    fix="general.fixes.leave",
    why="It holds unpressed too; it only does not lie flat.",
    source="common-practice",
    when=(),
    fires=(fires("leave it unpressed", problem("press_due", "trousers", "lower_part", "finish")),),
    near=(near("another problem", name="seam_left_open"),),
)
