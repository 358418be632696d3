"""Leave a narrow hip."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a narrow hip",
    problem="hip_narrow",
    fix="general.fixes.leave",
    why="Where the seams hold nothing it is not worth a cut: the waist of trousers is easily changed, the seat is "
    "not, says a newspaper column. Pass it on to someone it fits.",
    source="FREEWK",
    when=(),
    fires=(
        fires(
            "1 in too narrow",
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
        ),
    ),
    near=(near("too wide instead", name="hip_wide"),),
)
