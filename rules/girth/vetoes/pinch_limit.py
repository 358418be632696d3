"""More than two pinches take."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than two pinches take",
    fix="girth.fixes.pinch_band",
    why="One page finds a pinched band right for small amounts only: 1/2 in a pinch, two of them. More stands out "
    "behind like a tail.",
    source="MEANDER",
    when=(such_that("more than 1 in would have to go", past),),
    says="{amount} is past 1 in: two pinches take 1/2 in each, and more stands out behind.",
    fires=(
        fires(
            "1 1/2 in of it",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.pinch_band"),
            problem("too_wide", "trousers", "lower_part", "girth", "1 1/2 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 1 in", at=1, mm=length("1 in"))),
)
