"""Make the mend again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make the mend again",
    problem="mend_misfit",
    fix="wear.fixes.do_over",
    why="It was done to the wrong size: unpicked and done again it comes right.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a mend of the wrong size",
            problem("mend_misfit", "worn", "worn_place", "finish", "1/4 in"),
        ),
    ),
    near=(near("another problem", name="worn_through"),),
)
