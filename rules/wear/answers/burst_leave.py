"""Leave a burst seam."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a burst seam",
    problem="seam_burst",
    fix="general.fixes.leave",
    why="About 1 in at a hem or under a flap may wait. At seat and crotch it runs on as soon as she sits.",
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
