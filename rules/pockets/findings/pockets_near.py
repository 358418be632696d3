"""The back pockets stand too near each other once the center-back seam has been taken in."""

from advisor.figures.seams import POCKETS_APART
from advisor.knowledge import MATCH, Find, Measure, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, trait


def under(gap: Mm) -> bool:
    return gap < POCKETS_APART


def amount(gap: Mm) -> Mm:
    return POCKETS_APART - gap


rule = Find(
    title="Back pockets too near each other",
    problem="pockets_near",
    stage="join",
    why="Pockets that nearly meet look like a mistake, and there is no room left to fell or topstitch the seam between "
    "them. New, a designer sets them 1 1/2 to 2 1/2 in from the seam; altered, 1 in is the usual floor, or 3/4 in.",
    source="JSTERN",
    when=(
        given(
            "the gap between the pockets is known",
            Measure(role="back_pockets", slot="gap", place=MATCH.place, mm=MATCH.gap),
        ),
        given(
            "the center-back seam was taken in",
            Trait(role="lower_part", slot="center_back", word="taken in", place=MATCH.lower),
        ),
        such_that("they stand less than 2 in apart", under),
    ),
    amount=amount,
    says="{place} stand {gap} apart; 2 in, which is 1 in from each to the seam, is the least.",
    fires=(
        fires(
            "1 1/2 in apart",
            measure("back_pocket.gap", "back_pockets", "1 1/2 in"),
            trait("trousers.center_back", "lower_part", "taken in"),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("exactly 2 in", mm=length("2 in")),
        near("as they came", at=1, word="sewn"),
        near_without("no back pockets", at=0),
    ),
)
