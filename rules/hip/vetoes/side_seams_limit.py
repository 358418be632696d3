"""More than two sizes over the hip."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than two sizes over the hip",
    fix="hip.fixes.side_seams",
    why="Past about two sizes pockets, crotch and rise are out of proportion; seams at the sides do not move those.",
    source="NINEL",
    when=(such_that("more than 4 in would have to go", past),),
    says="{amount} is past 4 in, about two sizes: pockets, crotch and rise would stay where the larger size had them.",
    fires=(
        fires(
            "5 in of it",
            offered("hip_wide", "hip", "hip", "hip.fixes.side_seams"),
            problem("hip_wide", "hip", "hip", "level", "5 in"),
        ),
    ),
    near=(near("another fix", fix="hip.fixes.center_back"), near("exactly 4 in", at=1, mm=length("4 in"))),
)
