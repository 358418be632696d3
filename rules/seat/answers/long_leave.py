"""Leave a long back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a long back",
    problem="seat_long",
    fix="general.fixes.leave",
    why="Some length over the seat is what one sits on: standing folds are the price of sitting well.",
    source="TYROLER",
    when=(),
    fires=(
        fires(
            "1 in too long",
            problem("seat_long", "seat", "seat", "level", "1 in"),
        ),
    ),
    near=(near("too short instead", name="seat_short"),),
)
