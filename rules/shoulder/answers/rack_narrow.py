"""Leave it on the rack: shoulders too narrow."""

from advisor.knowledge import Answer, Mm, fires, length, near, problem, such_that

MOST = length("1/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Answer(
    title="Leave it on the rack: shoulders too narrow",
    problem="shoulder_narrow",
    fix="general.fixes.leave",
    why=(
        "More than 1/4 in a side cannot be had: the seams do not hold it, and back and armholes are too "
        "narrow as well. Leave it on the rack, or wear it open with the sleeves out, as a vest."
    ),
    source="from-memory",
    when=(such_that("it is more than 1/4 in a side", past),),
    fires=(
        fires(
            "leave it on the rack: shoulders too narrow",
            problem("shoulder_narrow", "shoulder", "shoulder", "girth", "3/8 in"),
        ),
    ),
    near=(
        near("another problem", name="shoulder_wide"),
        near("exactly 1/4 in", mm=length("1/4 in")),
    ),
)
