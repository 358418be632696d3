"""Too deep a pleat."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too deep a pleat",
    fix="body.fixes.back_pleat",
    why="Past 3 in the folds lie over each other beyond the shoulder blades, stiff and warm.",
    source="common-practice",
    when=(such_that("more than 3 in would go into it", past),),
    says="{amount} in one pleat is past 3 in: it would lie across the whole back in three layers.",
    fires=(
        fires(
            "4 in of it",
            offered("body_wide", "body", "body_width", "body.fixes.back_pleat"),
            problem("body_wide", "body", "body_width", "girth", "4 in"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_darts"),
        near("exactly 3 in", at=1, mm=MOST),
    ),
)
