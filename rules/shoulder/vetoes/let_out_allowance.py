"""The armhole seam does not hold what is wanting."""

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
from advisor.operations.shoulders import KEEP


def held(allowance: Mm) -> Mm:
    return max(allowance - KEEP, Mm(0))


def past(allowance: Mm, amount: Mm) -> bool:
    return amount > held(allowance)


rule = Veto(
    title="The armhole seam holds too little",
    fix="shoulder.fixes.let_out",
    why="An armhole is pulled at all day: 1/4 in must stay beyond the new stitching, finished and sewn twice.",
    source="common-practice",
    when=(
        given(
            "the allowance is known", Measure(role="shoulder", slot="allowance", place=MATCH.place, mm=MATCH.allowance)
        ),
        such_that("it holds less than is wanted", past),
    ),
    reckons={"held": held},
    says=(
        "The allowance at the top of the armhole is {allowance}; 1/4 in must stay, so it gives {held}, and "
        "{amount} is wanted."
    ),
    fires=(
        fires(
            "1/4 in wanted of 3/8 in",
            offered("shoulder_narrow", "shoulder", "shoulder", "shoulder.fixes.let_out"),
            problem("shoulder_narrow", "shoulder", "shoulder", "girth", "1/4 in"),
            measure("shoulder.allowance", "shoulder", "3/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("just what it gives", at=1, mm=length("1/8 in")),
        near("a wider allowance", at=2, mm=length("1/2 in")),
        near_without("the allowance is not known", at=2),
    ),
)
