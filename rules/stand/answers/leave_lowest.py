"""Leave the lowest place bare."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave the lowest place bare",
    problem="lowest_button_bare",
    fix="general.fixes.leave",
    why="Tucked in deep it needs no button.",
    source="common-practice",
    when=(),
    fires=(fires("leave the lowest place bare", problem("lowest_button_bare", "stand", "button_stand", "finish")),),
    near=(near("another problem", name="front_gapes"),),
)
