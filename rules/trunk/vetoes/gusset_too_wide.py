"""A gusset that would hang between the legs."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="The gusset would be too wide",
    fix="trunk.fixes.gusset",
    why="A gusset adds its width at one spot. Past a hand's breadth the cloth hangs between the legs and rubs, and the "
    "thighs gain as much.",
    source="common-practice",
    when=(such_that("it would be wider than 4 in", past),),
    says="The gusset would be {amount} wide; 4 in is the most that does not hang between the legs.",
    fires=(
        fires(
            "5 in short",
            offered("trunk_short", "trunk", "trunk", "trunk.fixes.gusset"),
            problem("trunk_short", "trunk", "trunk", "girth", "5 in"),
        ),
    ),
    near=(near("another fix", fix="trunk.fixes.rise_band"), near("exactly 4 in", at=1, mm=length("4 in"))),
)
