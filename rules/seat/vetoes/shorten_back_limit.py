"""Too much length off the back."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1 1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too much length off the back",
    fix="seat.fixes.shorten_back",
    why="Past 1 1/2 in it is no longer the length of the back that is wrong but the size of the seat; cut off, the "
    "waist is drawn down as soon as she sits.",
    source="common-practice",
    when=(such_that("more than 1 1/2 in would be cut off", past),),
    says="{amount} off the back is past 1 1/2 in: seated, the waist would be drawn down.",
    fires=(
        fires(
            "2 in of it",
            offered("seat_long", "seat", "seat", "seat.fixes.shorten_back"),
            problem("seat_long", "seat", "seat", "level", "2 in"),
        ),
    ),
    near=(near("another fix", fix="general.fixes.leave"), near("exactly 1 1/2 in", at=1, mm=length("1 1/2 in"))),
)
