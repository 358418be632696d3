"""Make long buttonholes shorter."""

from advisor.knowledge import (
    MATCH,
    Answer,
    Joined,
    fires,
    given,
    joined,
    length,
    near,
    one_of,
    problem,
    such_that,
)

rule = Answer(
    title="Make long buttonholes shorter",
    problem="hole_misfits",
    fix="closure.fixes.shorten_holes",
    role="front_opening",
    why="A hole that is too long is closed from the end away from the edge, where nothing pulls.",
    source="common-practice",
    when=(
        given(
            "hole and button are measured",
            Joined(kind="hole", place=MATCH.place, slot=one_of("hole", "old_hole"), over_mm=MATCH.over),
        ),
        such_that("they are too long", lambda over: over > 0),
    ),
    fires=(
        fires(
            "holes 1/8 in off",
            problem("hole_misfits", "front", "front_opening", "closure", "1/8 in"),
            joined("hole", ("front.hole", "front_opening"), ("front.hole_needed", "front_opening"), "1/8 in"),
        ),
    ),
    near=(
        near("it is where the holes lie", name="hole_near_edge"),
        near("it is where the holes lie", at=1, slot="clear"),
        near("they are too short", at=1, over_mm=-length("1/8 in")),
    ),
)
