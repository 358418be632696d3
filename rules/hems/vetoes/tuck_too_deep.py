"""A fold too deep to hide above an edge."""

from advisor.figures.exact import inches
from advisor.knowledge import Veto, fires, length, near, offered, problem, such_that

MOST = inches("3")


rule = Veto(
    title="Too deep a tuck",
    fix="hems.fixes.tuck_above_edge",
    why="A fold over 1 1/2 in deep inside the end is thick, shows as a ridge and turns down in wear.",
    source="common-practice",
    when=(such_that("it takes up more than 3 in", lambda amount: amount > MOST),),
    reckons={"fold": lambda amount: amount / 2},
    says="The fold would be {fold} deep; past 1 1/2 in it shows as a ridge and turns down.",
    fires=(
        fires(
            "4 in too long",
            offered("too_long", "leg", "leg_end", "hems.fixes.tuck_above_edge"),
            problem("too_long", "leg", "leg_end", "hem", "4 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.wide_hem"),
        near("just 3 in", at=1, mm=length("3 in")),
    ),
)
