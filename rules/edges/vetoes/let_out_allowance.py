"""The side seams hold too little."""

from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem

KEEP = inches("3/8")


def held(allowance: Mm) -> Mm:
    return max(4 * (allowance - KEEP), Mm(0))


rule = Veto(
    title="The side seams hold too little",
    fix="edges.fixes.let_out_upper_sides",
    why=(
        "Each of the two seams gives twice what its allowance has beyond what must stay. 3/8 in stays at a seam "
        "that is pulled at; 1/4 in only in close cloth without strain."
    ),
    source="SCL",
    when=(
        given(
            "the allowance is known",
            Measure(place=MATCH.place, role="upper_part", slot="allowance", mm=MATCH.allowance),
        ),
        such_that("the seams hold less than is wanted", lambda amount, allowance: amount > held(allowance)),
    ),
    reckons={"held": held},
    says=(
        "Both side seams together give {held} with allowances of {allowance}, of which 3/8 in must stay; "
        "{amount} is wanted."
    ),
    fires=(
        fires(
            "1 in wanted",
            offered("narrower", "bodice", "upper_part", "edges.fixes.let_out_upper_sides"),
            problem("narrower", "bodice", "upper_part", "join", "1 in"),
            measure("bodice.allowance", "upper_part", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.wedges"),
        near("just what they hold", at=1, mm=length("1/2 in")),
        near("wider allowances", at=2, mm=length("5/8 in")),
        near_without("the allowance is not known", at=2),
    ),
)
