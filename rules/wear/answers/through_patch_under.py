"""Patch a worn hole from behind."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Patch a worn hole from behind",
    problem="worn_through",
    fix="wear.fixes.patch_under",
    why="Cloth behind the hole carries the strain, and the edge of the hole is sewn down on it.",
    source="SCHOOLSEW-P",
    when=(),
    fires=(
        fires(
            "worn through",
            problem("worn_through", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("thin instead", name="worn_thin"),),
)
