"""The side seams hold too little over the hip."""

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
    return max(4 * (allowance - KEEP), Mm(0))


rule = Veto(
    title="The side seams hold too little over the hip",
    fix="hip.fixes.let_out_sides",
    why="Each of the two seams gives twice what its allowance has beyond what must stay: 3/8 in, for the hip is sat "
    "on.",
    source="common-practice",
    when=(
        given(
            "the allowance at the side seams is known",
            Measure(role="hip", slot="allowance", place=MATCH.other, mm=MATCH.allowance),
        ),
        such_that("they hold less than is wanted", lambda allowance, amount: amount > held(allowance)),
    ),
    reckons={"held": held},
    says="Both side seams together give {held} with allowances of {allowance}, of which 3/8 in must stay; {amount} "
    "is wanted.",
    fires=(
        fires(
            "too little in them",
            offered("hip_narrow", "hip", "hip", "hip.fixes.let_out_sides"),
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
            measure("hip.allowance", "hip", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.let_out_center_back"),
        near("exactly what they hold", at=1, mm=length("1/2 in")),
        near("wide allowances", at=2, mm=length("1 in")),
        near_without("the allowance is not known", at=2),
    ),
)
