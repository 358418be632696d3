"""More than the seat of jeans can lose."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than the seat of jeans can lose",
    fix="hip.fixes.center_back_felled",
    why="Jeans lose 1 to 3 in well and 4 in at the most, says a denim page; past that pockets and yoke are out of "
    "proportion.",
    source="NINEL",
    when=(such_that("more than 4 in would have to go", past),),
    says="{amount} is past 4 in, the most a denim source takes out of jeans before pockets and yoke are out of "
    "proportion.",
    fires=(
        fires(
            "5 in of it",
            offered("hip_wide", "hip", "hip", "hip.fixes.center_back_felled"),
            problem("hip_wide", "hip", "hip", "level", "5 in"),
        ),
    ),
    near=(near("another fix", fix="hip.fixes.side_seams"), near("exactly 4 in", at=1, mm=length("4 in"))),
)
