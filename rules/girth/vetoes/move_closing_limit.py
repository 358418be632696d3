"""A lap bears no more."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a lap can take up",
    fix="girth.fixes.move_closing",
    why="The whole amount comes out beside the opening: past 3/4 in the opening swings to one side, its lower end "
    "puckers, and the side seams come forward.",
    source="common-practice",
    when=(such_that("more than 3/4 in would have to go", past),),
    says="{amount} is past 3/4 in, the most a lap takes up before the front swings to one side.",
    fires=(
        fires(
            "1 in too wide",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.move_closing"),
            problem("too_wide", "trousers", "lower_part", "girth", "1 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 3/4 in", at=1, mm=length("3/4 in"))),
)
