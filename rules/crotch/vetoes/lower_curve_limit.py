"""Lower than the curve may go."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Lower than the curve may go",
    fix="crotch.fixes.lower_curve",
    why="A curve sewn lower takes cloth away that a leg needs to lift. The one page that speaks of it allows a very "
    "small amount and prints it as 1 cm and as 1/4 in, which differ; the smaller is kept.",
    source="MAPLE",
    when=(such_that("it would go more than 1/4 in lower", past),),
    says="The curve would go {amount} lower; 1/4 in is the most, by a page that prints 1 cm beside it.",
    fires=(
        fires(
            "1/2 in of it",
            offered("crotch_high", "crotch", "crotch", "crotch.fixes.lower_curve"),
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("another fix", fix="crotch.fixes.gusset"), near("exactly 1/4 in", at=1, mm=length("1/4 in"))),
)
