"""More than a seat seam takes."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a seat seam takes",
    fix="hip.fixes.center_back",
    why="Past 3 in the seat distorts, says one tailoring page, and a smaller size serves better; a suit shop stops "
    "at 0.8 to 1.6 in, because pockets move.",
    source="SCL",
    when=(such_that("more than 3 in would have to go", past),),
    says="{amount} is past 3 in, the most one tailoring source takes in at center back before the seat distorts. A "
    "suit shop stops at 1 5/8 in.",
    fires=(
        fires(
            "3 1/2 in of it",
            offered("hip_wide", "hip", "hip", "hip.fixes.center_back"),
            problem("hip_wide", "hip", "hip", "level", "3 1/2 in"),
        ),
    ),
    near=(near("another fix", fix="hip.fixes.side_seams"), near("exactly 3 in", at=1, mm=length("3 in"))),
)
