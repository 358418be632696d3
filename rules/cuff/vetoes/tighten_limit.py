"""Too much to blouse over a cuff."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1 1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too much to blouse over a cuff",
    fix="cuff.fixes.tighten_cuffs",
    why="Past 1 1/2 in the sleeve hangs over the cuff like a bag and gets in the way.",
    source="common-practice",
    when=(such_that("more than 1 1/2 in", past),),
    says="{amount} over the cuff is past 1 1/2 in: it would hang down like a bag.",
    fires=(
        fires(
            "2 in of it",
            offered("too_long", "sleeve", "sleeve_end", "cuff.fixes.tighten_cuffs"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "2 in"),
        ),
    ),
    near=(
        near("another fix", fix="cuff.fixes.tuck_sleeves"),
        near("exactly 1 1/2 in", at=1, mm=MOST),
    ),
)
