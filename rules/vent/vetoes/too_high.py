"""A vent too high."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("6 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="A vent too high",
    fix="vent.fixes.lengthen",
    why="A dressmaker lets vents be 6 to 12 in long, short enough to show nothing that was not meant: 6 in is between "
    "the shortest and the longest. Opened by more, the lap no longer covers it.",
    source="ICONIC",
    when=(such_that("it would go up by more than 6 in", past),),
    says="The vent would go {amount} further up; past 6 in its lap no longer covers what it opens.",
    fires=(
        fires(
            "7 in of it",
            offered("vent_short", "vent", "vent", "vent.fixes.lengthen"),
            problem("vent_short", "vent", "vent", "finish", "7 in"),
        ),
    ),
    near=(near("another fix", fix="general.fixes.leave"), near("exactly 6 in", at=1, mm=length("6 in"))),
)
