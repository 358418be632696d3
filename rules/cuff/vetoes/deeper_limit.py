"""Too deep a cuff."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1 1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too deep a cuff",
    fix="cuff.fixes.deeper_cuffs",
    why="A cuff is about 2 3/4 in deep; with more than 1 1/2 in added it is over 4 in and no cuff any more.",
    source="SHIRTBOOK-CUFF",
    when=(such_that("more than 1 1/2 in", past),),
    says="{amount} more would make {place} end in a cuff over 4 in deep.",
    fires=(
        fires(
            "2 in of it",
            offered("too_short", "sleeve", "sleeve_end", "cuff.fixes.deeper_cuffs"),
            problem("too_short", "sleeve", "sleeve_end", "hem", "2 in"),
        ),
    ),
    near=(
        near("another fix", fix="hems.fixes.insert_band"),
        near("exactly 1 1/2 in", at=1, mm=MOST),
    ),
)
