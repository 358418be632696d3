"""Leave a worn hole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a worn hole",
    problem="worn_through",
    fix="general.fixes.leave",
    why="For rags that should look like rags a hole may stay. It will grow with every wash.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "worn through",
            problem("worn_through", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("thin instead", name="worn_thin"),),
)
