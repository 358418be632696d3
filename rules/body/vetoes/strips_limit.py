"""Too narrow to be worth it."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too narrow to be worth it",
    fix=("body.fixes.side_strips", "body.fixes.side_strips_other"),
    why=(
        "Past 4 in the shoulders, armholes and collar are two sizes too small as well, and strips at the "
        "sides move none of them."
    ),
    source="common-practice",
    when=(such_that("more than 4 in is wanting", past),),
    says="{amount} is past 4 in, about two sizes: shoulders, armholes and collar would stay too small.",
    fires=(
        fires(
            "5 in of it",
            offered("body_narrow", "body", "body_width", "body.fixes.side_strips"),
            problem("body_narrow", "body", "body_width", "girth", "5 in"),
        ),
        fires(
            "5 in of it; the other way",
            offered("body_narrow", "body", "body_width", "body.fixes.side_strips_other"),
            problem("body_narrow", "body", "body_width", "girth", "5 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("exactly 4 in", at=1, mm=MOST),
    ),
)
