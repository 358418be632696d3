"""Iron a patch onto a worn hole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Iron a patch onto a worn hole",
    problem="worn_through",
    fix="wear.fixes.iron_on",
    why="The quickest that holds for a season: cut, ironed, worn.",
    source="MAKERP",
    when=(),
    fires=(
        fires(
            "worn through",
            problem("worn_through", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("thin instead", name="worn_thin"),),
)
