"""Sew something at the lowest place."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew something at the lowest place",
    problem="lowest_button_bare",
    fix="stand.fixes.sew_lowest",
    why="The gap below is filled with whatever is at hand.",
    source="common-practice",
    when=(),
    fires=(
        fires("sew something at the lowest place", problem("lowest_button_bare", "stand", "button_stand", "finish")),
    ),
    near=(near("another problem", name="front_gapes"),),
)
