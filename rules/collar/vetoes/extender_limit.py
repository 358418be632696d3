"""More than a loop hides."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a loop hides",
    fix="collar.fixes.extender",
    why="Past 3/4 in the two ends of the collar stand so far apart that no tie covers it.",
    source="common-practice",
    when=(such_that("more than 3/4 in", past),),
    says="{amount} is past 3/4 in: the ends of {place} would stand apart and show the loop.",
    fires=(
        fires(
            "1 in of it",
            offered("collar_tight", "collar", "collar", "collar.fixes.extender"),
            problem("collar_tight", "collar", "collar", "closure", "1 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("exactly 3/4 in", at=1, mm=MOST),
    ),
)
