"""Leave it on the rack: shoulders far too wide."""

from advisor.knowledge import Answer, Mm, fires, length, near, problem, such_that

MOST = length("3/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Answer(
    title="Leave it on the rack: shoulders far too wide",
    problem="shoulder_wide",
    fix="general.fixes.leave",
    why=(
        "Past 3/4 in a side it is another size: armhole, back and sleeve head are all too large, and cutting "
        "one of them in spoils the others. Leave it on the rack, or play a larger man's shirt for what it is."
    ),
    source="from-memory",
    when=(such_that("it is more than 3/4 in a side", past),),
    fires=(
        fires(
            "leave it on the rack: shoulders far too wide",
            problem("shoulder_wide", "shoulder", "shoulder", "girth", "1 in"),
        ),
    ),
    near=(
        near("another problem", name="shoulder_narrow"),
        near("exactly 3/4 in", mm=length("3/4 in")),
    ),
)
