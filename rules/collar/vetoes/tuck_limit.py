"""Too much for a tuck in the stand."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too much for a tuck in the stand",
    fix="collar.fixes.tuck_stand",
    why="Past 1/2 in the tuck is a lump in the neck and draws the back of the shirt up.",
    source="common-practice",
    when=(such_that("more than 1/2 in", past),),
    says="{amount} is past 1/2 in: the tuck would press in the neck like a knot.",
    fires=(
        fires(
            "5/8 in of it",
            offered("collar_loose", "collar", "collar", "collar.fixes.tuck_stand"),
            problem("collar_loose", "collar", "collar", "closure", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("exactly 1/2 in", at=1, mm=MOST),
    ),
)
