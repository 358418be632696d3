"""Darn a worn hole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Darn a worn hole",
    problem="worn_through",
    fix="wear.fixes.darn",
    why="New threads take the place of the lost ones, and no edge stands out.",
    source="SCHOOLSEW-D",
    when=(),
    fires=(
        fires(
            "worn through",
            problem("worn_through", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("thin instead", name="worn_thin"),),
)
