"""The gusset in the crotch would be too wide."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="The gusset in the crotch would be too wide",
    fix="crotch.fixes.gusset",
    why="Past a hand's breadth the cloth hangs between the legs and rubs.",
    source="common-practice",
    when=(such_that("it would have to be wider than 4 in", past),),
    reckons={"width": lambda amount: 2 * amount},
    says="For {amount} more depth the gusset would be {width} wide; 4 in is the most that does not hang between the "
    "legs.",
    fires=(
        fires(
            "2 1/2 in of it",
            offered("crotch_high", "crotch", "crotch", "crotch.fixes.gusset"),
            problem("crotch_high", "crotch", "crotch", "level", "2 1/2 in"),
        ),
    ),
    near=(near("another fix", fix="crotch.fixes.rise_band"), near("exactly 2 in", at=1, mm=length("2 in"))),
)
