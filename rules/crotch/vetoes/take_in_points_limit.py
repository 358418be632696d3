"""Too much at the inner seams."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST = length("3/4 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Too much at the inner seams",
    fix="crotch.fixes.take_in_points",
    why="Taken further up at the points the seam from front to back gets too short to sit in, and the thighs bind.",
    source="common-practice",
    when=(such_that("more than 3/4 in would have to come up", past),),
    says="{amount} is past 3/4 in, the most that comes up at the inner seams before it binds; the rest is a matter "
    "for the waist.",
    fires=(
        fires(
            "1 in of it",
            offered("crotch_low", "crotch", "crotch", "crotch.fixes.take_in_points"),
            problem("crotch_low", "crotch", "crotch", "level", "1 in"),
        ),
    ),
    near=(near("another fix", fix="crotch.fixes.lift_at_waist"), near("exactly 3/4 in", at=1, mm=length("3/4 in"))),
)
