"""More than two sizes at the side seams."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than two sizes at the side seams",
    fix=("body.fixes.take_in_sides", "body.fixes.take_in_sides_felled"),
    why=(
        "Past about two sizes the armholes hang too low and the shoulders too wide, and side seams move neither. "
        "Counted here at 2 in a size; one page counts 4 in to a size of shirt."
    ),
    source="TWOSIZES",
    when=(such_that("more than 4 in would have to go", past),),
    says="{amount} is past 4 in, about two sizes: armholes and shoulders would stay those of the larger size.",
    fires=(
        fires(
            "5 in of it",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides"),
            problem("body_wide", "body", "body_width", "girth", "5 in"),
        ),
        fires(
            "5 in of it; the other way",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides_felled"),
            problem("body_wide", "body", "body_width", "girth", "5 in"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_darts"),
        near("exactly 4 in", at=1, mm=MOST),
    ),
)
