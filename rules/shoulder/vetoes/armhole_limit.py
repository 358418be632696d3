"""Too wide to be worth it."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too wide to be worth it",
    fix=("shoulder.fixes.move_armhole", "shoulder.fixes.tuck"),
    why=(
        "Past 3/4 in a side armhole, back and sleeve head are too large as well: the balance of the garment "
        "changes, and it cannot be put back."
    ),
    source="from-memory",
    when=(such_that("more than 3/4 in a side", past),),
    says=("{amount} a side is past 3/4 in: armholes and back are of a larger size too, and would hang as before."),
    fires=(
        fires(
            "1 in of it",
            offered("shoulder_wide", "shoulder", "shoulder", "shoulder.fixes.move_armhole"),
            problem("shoulder_wide", "shoulder", "shoulder", "girth", "1 in"),
        ),
        fires(
            "1 in of it; the other way",
            offered("shoulder_wide", "shoulder", "shoulder", "shoulder.fixes.tuck"),
            problem("shoulder_wide", "shoulder", "shoulder", "girth", "1 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("exactly 3/4 in", at=1, mm=MOST),
    ),
)
