"""Tabs fold no more away."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than tabs can fold away",
    fix="girth.fixes.side_tabs",
    why="A tab lays a fold at each side; a fold that takes more than 1 in is a lump under a belt and springs open when "
    "she sits.",
    source="common-practice",
    when=(such_that("more than 2 in would have to go", past),),
    reckons={"each": lambda amount: amount / 2},
    says="Each tab would fold {each} away; 1 in is the most that lies flat.",
    fires=(
        fires(
            "3 in too wide",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.side_tabs"),
            problem("too_wide", "trousers", "lower_part", "girth", "3 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 2 in", at=1, mm=length("2 in"))),
)
