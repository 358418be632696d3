"""Leave a long lining."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a long lining",
    problem="lining_long",
    fix="general.fixes.leave",
    why="Where the skirt is dark and seldom seen from below it may do; it wears through at its edge first.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "2 in too long",
            problem("lining_long", "lining", "lining", "finish", "2 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
