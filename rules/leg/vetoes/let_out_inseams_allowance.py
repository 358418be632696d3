"""The inner leg seams hold too little."""

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


rule = Veto(
    title="The inner leg seams hold too little",
    fix="leg.fixes.let_out_inseams",
    why="One seam gives twice what its allowance has beyond what must stay: 3/8 in where it is sat and walked on.",
    source="common-practice",
    when=(
        given(
            "the allowance is known",
            Measure(role="legs", slot="inseam_allowance", place=MATCH.other, mm=MATCH.allowance),
        ),
        such_that("they hold less than is wanted", lambda allowance, amount: amount > held(allowance)),
    ),
    reckons={"held": held},
    says="The seam gives {held} with allowances of {allowance}, of which 3/8 in must stay; {amount} is wanted.",
    fires=(
        fires(
            "too little in them",
            offered("leg_narrow", "thigh", "leg_girth", "leg.fixes.let_out_inseams"),
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
            measure("legs.inseam_allowance", "legs", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.strips"),
        near("exactly what they hold", at=1, mm=length("1/4 in")),
        near("wide allowances", at=2, mm=length("1 in")),
        near_without("the allowance is not known", at=2),
    ),
)
