"""Leave misfitting buttonholes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave misfitting buttonholes",
    problem="hole_misfits",
    fix="general.fixes.leave",
    role="front_opening",
    why="A hole that is a little tight eases with use, and one that is a little long holds while nothing pulls on it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "holes 1/8 in off",
            problem("hole_misfits", "front", "front_opening", "closure", "1/8 in"),
        ),
    ),
    near=(near("it is where the holes lie", name="hole_near_edge"),),
)
