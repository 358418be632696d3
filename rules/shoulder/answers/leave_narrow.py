"""Leave narrow shoulders."""

from advisor.knowledge import Answer, Mm, fires, length, near, problem, such_that

MOST = length("1/4 in")


def within(amount: Mm) -> bool:
    return amount <= MOST


rule = Answer(
    title="Leave narrow shoulders",
    problem="shoulder_narrow",
    fix="general.fixes.leave",
    why=(
        "Up to 1/4 in a side is borne where the arms are not lifted much: wear it and lift both arms before "
        "you open a seam."
    ),
    source="from-memory",
    when=(such_that("it is no more than 1/4 in a side", within),),
    fires=(fires("leave narrow shoulders", problem("shoulder_narrow", "shoulder", "shoulder", "girth", "1/8 in")),),
    near=(
        near("another problem", name="shoulder_wide"),
        near("3/8 in short of the bone", mm=length("3/8 in")),
    ),
)
