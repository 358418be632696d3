"""Leave a short back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short back",
    problem="seat_short",
    fix="general.fixes.leave",
    why="A long shirt or a back that is seldom seen seated hides it; for a single scene it is not worth the band "
    "coming off.",
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
