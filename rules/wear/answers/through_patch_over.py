"""Patch a worn hole on top."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Patch a worn hole on top",
    problem="worn_through",
    fix="wear.fixes.patch_over",
    why="Where knees are knelt on, the patch itself should take the wear: it goes on top and is meant to be seen.",
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
