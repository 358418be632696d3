"""Further than a button can move."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Further than a button can move",
    fix="collar.fixes.move_button",
    why=(
        "Past 1/2 in the button sits at the very end of its band, or the front laps so far that the points lie crooked."
    ),
    source="common-practice",
    when=(such_that("more than 1/2 in", past),),
    says="{amount} is past 1/2 in: the button would sit at the end of the band, or the points lie crooked.",
    fires=(
        fires(
            "5/8 in of it",
            offered("collar_tight", "collar", "collar", "collar.fixes.move_button"),
            problem("collar_tight", "collar", "collar", "closure", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="collar.fixes.extender"),
        near("exactly 1/2 in", at=1, mm=MOST),
    ),
)
