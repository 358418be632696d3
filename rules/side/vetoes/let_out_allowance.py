"""The side seams hold too little."""

from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem

KEEP = inches("3/8")


def held(allowance: Mm) -> Mm:
    return max(2 * (allowance - KEEP), Mm(0))


rule = Veto(
    title="The side seams hold too little",
    fix="side.fixes.let_out",
    why=(
        "Each side seam gives twice what its allowance has beyond what must stay: 3/8 in over the hips, where it is "
        "pulled at in sitting."
    ),
    source="SCL",
    when=(
        given(
            "the allowance is known",
            Measure(place=MATCH.place, role="side_opening", slot="allowance", mm=MATCH.allowance),
        ),
        such_that("a seam holds less than is wanted", lambda amount, allowance: amount > held(allowance)),
    ),
    reckons={"held": held},
    says=(
        "Each side seam gives {held} with an allowance of {allowance}, of which 3/8 in must stay; {amount} is "
        "wanted at each side."
    ),
    fires=(
        fires(
            "1 in wanted",
            offered("gapes", "side_opening", "side_opening", "side.fixes.let_out"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            measure("side_opening.allowance", "side_opening", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="side.fixes.side_strips"),
        near("just what it holds", at=1, mm=length("1/4 in")),
        near("wider allowances", at=2, mm=length("7/8 in")),
        near_without("the allowance is not known", at=2),
    ),
)
