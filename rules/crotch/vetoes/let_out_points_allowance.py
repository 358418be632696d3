"""The inner seams hold too little at the crotch."""

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
    return max(allowance - KEEP, Mm(0))


rule = Veto(
    title="The inner seams hold too little at the crotch",
    fix="crotch.fixes.let_out_points",
    why="Front and back point each move out by what the allowance has beyond the 3/8 in that must stay; half of both "
    "counted down is just that.",
    source="common-practice",
    when=(
        given(
            "the allowance at the inner seams is known",
            Measure(role="legs", slot="inseam_allowance", place=MATCH.other, mm=MATCH.allowance),
        ),
        such_that("they hold less than is wanted", lambda allowance, amount: amount > held(allowance)),
    ),
    reckons={"held": held},
    says="The inner seams give {held} at the crotch with allowances of {allowance}, of which 3/8 in must stay; "
    "{amount} is wanted.",
    fires=(
        fires(
            "too little in them",
            offered("crotch_high", "crotch", "crotch", "crotch.fixes.let_out_points"),
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
            measure("legs.inseam_allowance", "legs", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="crotch.fixes.gusset"),
        near("exactly what they hold", at=1, mm=length("1/8 in")),
        near("wide allowances", at=2, mm=length("1 in")),
        near_without("the allowance is not known", at=2),
    ),
)
