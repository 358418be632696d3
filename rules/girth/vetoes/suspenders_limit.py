"""More than suspenders carry well."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than suspenders carry well",
    fix="girth.fixes.suspenders",
    why="Past 3 in the front hangs in folds from its buttons and the pockets gape: it looks like a clown's, which is "
    "sometimes wanted and then overruled.",
    source="common-practice",
    when=(such_that("the waist would stand off by more than 3 in", past),),
    says="The waist would stand {amount} off the body; past 3 in front and pockets hang in folds from the buttons.",
    fires=(
        fires(
            "3 1/2 in of it",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.suspenders"),
            problem("too_wide", "trousers", "lower_part", "girth", "3 1/2 in"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("exactly 3 in", at=1, mm=length("3 in"))),
)
