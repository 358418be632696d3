"""Leave a short closure."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short closure",
    problem="closure_short",
    fix="general.fixes.leave",
    role="front_opening",
    why="A short rest at the top may stand open, if nothing shows that should not and nothing pulls there.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
        ),
    ),
    near=(near("it is too long", name="closure_long"),),
)
