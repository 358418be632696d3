"""A center-back seam takes no more before the seat distorts."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a center-back seam takes",
    fix="girth.fixes.center_back",
    why="Past 3 in the seat distorts, says one tailoring page, and a smaller size serves better. A suit shop stops at "
    "0.8 to 1.6 in, because pockets move; a jeans page goes to 4 in.",
    source="SCL",
    when=(such_that("more than 3 in would have to go", past),),
    says="{amount} is past 3 in, the most one tailoring source takes in at center back before the seat distorts. "
    "Others stop at 1 5/8 in (suits) or at 4 in (jeans).",
    fires=(
        fires(
            "3 1/2 in too wide",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "3 1/2 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 3 in", at=1, mm=length("3 in"))),
)
