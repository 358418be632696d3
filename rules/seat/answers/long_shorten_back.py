"""Shorten a long back below the band."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Shorten a long back below the band",
    problem="seat_long",
    fix="seat.fixes.shorten_back",
    why="The spare length comes off at the top of the back, where the band hides it, and the folds go.",
    source="PETITMAIN",
    when=(),
    fires=(
        fires(
            "1 in too long",
            problem("seat_long", "seat", "seat", "level", "1 in"),
        ),
    ),
    near=(near("too short instead", name="seat_short"),),
)
