"""Leave an opening without a closure."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave an opening without a closure",
    problem="closure_missing",
    fix="general.fixes.leave",
    role="front_opening",
    why="Worn open over something else it needs no closure; its edges will stretch all the same.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
        ),
    ),
    near=(near("something closes it, and is too long", name="closure_long"),),
)
