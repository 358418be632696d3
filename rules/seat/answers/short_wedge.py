"""Set a wedge into a short back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a wedge into a short back",
    problem="seat_short",
    fix="seat.fixes.back_wedge",
    why="A wedge below the band gives the length at the center back and nothing at the sides.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1 in too short",
            problem("seat_short", "seat", "seat", "level", "1 in"),
        ),
    ),
    near=(near("too long instead", name="seat_long"),),
)
