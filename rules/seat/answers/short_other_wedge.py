"""Set a wedge of another cloth into a short back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a wedge of another cloth into a short back",
    problem="seat_short",
    fix="seat.fixes.back_wedge_of_other_cloth",
    why="Below the band, under a belt or a long top, another cloth is hardly seen.",
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
