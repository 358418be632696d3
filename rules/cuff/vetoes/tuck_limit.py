"""Too deep a tuck in the sleeve."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too deep a tuck in the sleeve",
    fix="cuff.fixes.tuck_sleeves",
    why="Past 3 in the fold is 1 1/2 in deep, thicker than the arm of the sleeve bears.",
    source="common-practice",
    when=(such_that("more than 3 in", past),),
    says="{amount} makes a fold of more than 1 1/2 in: it stands out and binds the arm.",
    fires=(
        fires(
            "4 in of it",
            offered("too_long", "sleeve", "sleeve_end", "cuff.fixes.tuck_sleeves"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "4 in"),
        ),
    ),
    near=(
        near("another fix", fix="hems.fixes.cuff_again"),
        near("exactly 3 in", at=1, mm=MOST),
    ),
)
