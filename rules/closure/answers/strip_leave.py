"""Leave a strip as it came out."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a strip as it came out",
    problem="strip_misfits",
    fix="general.fixes.leave",
    role="front_opening",
    why="A strip that is a little off laps a little more or less; as long as the buttons lie on it, it can stay.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a strip too small",
            problem("strip_misfits", "front", "front_opening", "closure"),
        ),
    ),
    near=(near("it is the buttonholes", name="hole_misfits"),),
)
