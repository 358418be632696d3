"""The waist seam does not hold enough to be let down."""

from advisor.figures.exact import inches
from advisor.knowledge import (
    MATCH,
    Measure,
    Mm,
    Veto,
    fires,
    given,
    length,
    measure,
    near,
    near_without,
    offered,
    problem,
    such_that,
)

KEEP = inches("3/8")


def held(allowance: Mm) -> Mm:
    return max(2 * (allowance - KEEP), Mm(0))


def past(allowance: Mm, amount: Mm) -> bool:
    return amount > held(allowance)


rule = Veto(
    title="The waist seam holds too little",
    fix="waist.fixes.let_down_seam",
    why="Each side of the seam gives its allowance less what must stay: 3/8 in at a seam that is pulled at, and the "
    "waist of a one-piece is.",
    source="common-practice",
    when=(
        given("the allowance is known", Measure(role="waist_seam", slot="allowance", mm=MATCH.allowance)),
        such_that("it holds less than is wanted", past),
    ),
    reckons={"held": held},
    says="The waist seam holds {held}, both sides together, with an allowance of {allowance} of which 3/8 in must "
    "stay; {amount} is wanted.",
    fires=(
        fires(
            "1 in wanted of 1/2 in allowances",
            offered("waist_high", "bodice", "upper_part", "waist.fixes.let_down_seam"),
            problem("waist_high", "bodice", "upper_part", "level", "1 in"),
            measure("waist.allowance", "waist_seam", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="waist.fixes.inset_band"),
        near("exactly what it holds", at=1, mm=length("1/4 in")),
        near_without("the allowance is not known", at=2),
    ),
)
