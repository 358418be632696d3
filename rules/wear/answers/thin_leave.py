"""Leave a thin place."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a thin place",
    problem="worn_thin",
    fix="general.fixes.leave",
    why="For a costume worn twice a year thin cloth may last as it is; look again after each wash.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "worn thin",
            problem("worn_thin", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("worn through instead", name="worn_through"),),
)
