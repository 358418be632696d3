"""Leave a fallen hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a fallen hem",
    problem="hem_down",
    fix="general.fixes.leave",
    why="For a beggar or a drowned man a hem may hang; nobody may dance in it.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("hem_down", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
