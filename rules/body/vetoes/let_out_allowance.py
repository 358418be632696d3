"""The side seams do not hold enough to be let out."""

from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem
from advisor.operations.bodies import KEEP


def held(allowance: Mm) -> Mm:
    return max(4 * (allowance - KEEP), Mm(0))


def past(allowance: Mm, amount: Mm) -> bool:
    return amount > held(allowance)


rule = Veto(
    title="The side seams hold too little",
    fix="body.fixes.let_out_sides",
    why=(
        "Each side of each seam gives its allowance less what must stay beyond the new stitching: 3/8 in where an "
        "armhole pulls at it, and then finished and sewn twice."
    ),
    source="common-practice",
    when=(
        given(
            "the allowance is known",
            Measure(role="body_width", slot="allowance", place=MATCH.place, mm=MATCH.allowance),
        ),
        such_that("the seams hold less than is wanted", past),
    ),
    reckons={"held": held},
    says=(
        "Both side seams together hold {held}: their allowance is {allowance}, 3/8 in of that must stay, and there are "
        "four layers. {amount} is wanted."
    ),
    fires=(
        fires(
            "1 in wanted of 1/2 in allowances",
            offered("body_narrow", "body", "body_width", "body.fixes.let_out_sides"),
            problem("body_narrow", "body", "body_width", "girth", "1 in"),
            measure("body.allowance", "body_width", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.side_strips"),
        near("exactly what they hold", at=1, mm=length("1/2 in")),
        near("wide allowances", at=2, mm=length("5/8 in")),
        near_without("the allowance is not known", at=2),
    ),
)
