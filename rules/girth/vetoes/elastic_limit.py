"""Past about two sizes elastic makes a bag of the back."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than two sizes in elastic",
    fix="girth.fixes.elastic_back",
    why="Past about two sizes pockets, crotch and rise are out of proportion, and a back gathered by so much is a bag.",
    source="NINEL",
    when=(such_that("more than 4 in would have to go", past),),
    says="{amount} is past 4 in, about two sizes: the back would hang in a bag below the elastic.",
    fires=(
        fires(
            "5 in too wide",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.elastic_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "5 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 4 in", at=1, mm=length("4 in"))),
)
