"""More than a pad carries."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("1/2 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a pad carries",
    fix="shoulder.fixes.pad",
    why="A pad that reaches more than 1/2 in past the bone has nothing under it and tips down.",
    source="common-practice",
    when=(such_that("more than 1/2 in past the bone", past),),
    says="{amount} past the bone is more than the 1/2 in a thin pad carries.",
    fires=(
        fires(
            "5/8 in of it",
            offered("shoulder_wide", "shoulder", "shoulder", "shoulder.fixes.pad"),
            problem("shoulder_wide", "shoulder", "shoulder", "girth", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="shoulder.fixes.tuck"),
        near("exactly 1/2 in", at=1, mm=MOST),
    ),
)
