"""Pin a burst seam."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Pin a burst seam",
    problem="seam_burst",
    fix="wear.fixes.pin_seam",
    why="It gets her through the evening, and nothing is done that could not be undone.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a burst seam",
            problem("seam_burst", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("a hole instead", name="worn_through"),),
)
