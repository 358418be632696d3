"""The seat seam holds too little."""

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
    title="The seat seam holds too little",
    fix="hip.fixes.let_out_center_back",
    why="Each side of the seam gives its allowance less what must stay beyond the new stitching: 3/8 in at the "
    "center back of trousers, says one tailoring page; another guide keeps 1/2 in.",
    source="SCL",
    when=(
        given(
            "the allowance at the center back is known",
            Measure(role="lower_part", slot="allowance", place=MATCH.other, mm=MATCH.allowance),
        ),
        such_that("they hold less than is wanted", lambda allowance, amount: amount > held(allowance)),
    ),
    reckons={"held": held},
    says="The center-back seam holds {held}, both sides together: its allowance is {allowance}, and 3/8 in of that "
    "must stay. {amount} is wanted.",
    fires=(
        fires(
            "too little in them",
            offered("hip_narrow", "hip", "hip", "hip.fixes.let_out_center_back"),
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
            measure("trousers.allowance", "lower_part", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.let_out_sides"),
        near("exactly what they hold", at=1, mm=length("1/4 in")),
        near("wide allowances", at=2, mm=length("1 in")),
        near_without("the allowance is not known", at=2),
    ),
)
