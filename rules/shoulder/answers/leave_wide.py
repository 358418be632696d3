"""Leave wide shoulders."""

from advisor.knowledge import Answer, Mm, fires, length, near, problem, such_that

MOST = length("3/4 in")


def within(amount: Mm) -> bool:
    return amount <= MOST


rule = Answer(
    title="Leave wide shoulders",
    problem="shoulder_wide",
    fix="general.fixes.leave",
    why=(
        "Up to 3/4 in a side a dropped shoulder passes for a style, most of all in soft cloth under a vest or an apron."
    ),
    source="from-memory",
    when=(such_that("it is no more than 3/4 in a side", within),),
    fires=(fires("leave wide shoulders", problem("shoulder_wide", "shoulder", "shoulder", "girth", "1/2 in")),),
    near=(
        near("another problem", name="shoulder_narrow"),
        near("1 in past the bone", mm=length("1 in")),
    ),
)
