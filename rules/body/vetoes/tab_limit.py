"""Too much for a tab."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too much for a tab",
    fix="body.fixes.back_tab",
    why="What a tab bunches up past 3 in stands out like a bustle.",
    source="common-practice",
    when=(such_that("more than 3 in would be drawn in", past),),
    says="{amount} is past 3 in: bunched up under a tab it stands out behind.",
    fires=(
        fires(
            "4 in of it",
            offered("body_wide", "body", "body_width", "body.fixes.back_tab"),
            problem("body_wide", "body", "body_width", "girth", "4 in"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_darts"),
        near("exactly 3 in", at=1, mm=MOST),
    ),
)
