"""Far too large: it may not be worth starting."""

from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Find, Measure, Mm, fires, given, length, measure, near, such_that

MOST = inches(4)
WAISTS = ("waist_seam", "waist")


def amount(pinned: Mm) -> Mm:
    return pinned


rule = Find(
    title="Too large by more than two sizes",
    problem="many_sizes",
    stage="open",
    why=(
        "Taking in moves everything beside the seam. 3 in is called the most for trousers at the center back, and 4 in "
        "the most for jeans; past that pockets, crotch and rise go out of proportion, and no seam can do it: taken in "
        "further it cannot hang well, and it is another size or a new cut."
    ),
    source="NINEL",
    when=(
        given(
            "spare cloth was pinned at the waist",
            Measure(role=MATCH.role, place=MATCH.place, slot="pinned", mm=MATCH.pinned),
        ),
        such_that("it is the waist that was pinned", lambda role: role in WAISTS),
        such_that("it is more than 4 in", lambda pinned: pinned > MOST),
    ),
    amount=amount,
    says=(
        "{pinned} pinned out at {place} is more than two sizes: past 4 in pockets, crotch and rise go out of "
        "proportion."
    ),
    fires=(
        fires(
            "5 in pinned",
            measure("waist.pinned", "waist_seam", "5 in"),
            amount=length("5 in"),
        ),
        fires("5 in where it hangs from the waist", measure("waist.pinned", "waist", "5 in"), amount=length("5 in")),
    ),
    near=(
        near("a leg was pinned", role="leg_girth"),
        near("just 4 in", mm=length("4 in")),
        near("the room wanted at the waist", slot="ease"),
    ),
)
