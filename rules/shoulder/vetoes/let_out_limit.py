"""More than a shoulder gives."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a shoulder gives",
    fix="shoulder.fixes.let_out",
    why="Past 1/4 in a side the back and the armholes are too narrow as well, and no seam holds so much.",
    source="from-memory",
    when=(such_that("more than 1/4 in a side", past),),
    says="{amount} a side is past 1/4 in: no armhole seam holds so much, and the back is too narrow too.",
    fires=(
        fires(
            "3/8 in of it",
            offered("shoulder_narrow", "shoulder", "shoulder", "shoulder.fixes.let_out"),
            problem("shoulder_narrow", "shoulder", "shoulder", "girth", "3/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("exactly 1/4 in", at=1, mm=MOST),
    ),
)
