"""The center-back seam does not hold enough to be let out."""

from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem

KEEP = inches("3/8")


def held(allowance: Mm) -> Mm:
    return max(2 * (allowance - KEEP), Mm(0))


def past(allowance: Mm, amount: Mm) -> bool:
    return amount > held(allowance)


rule = Veto(
    title="The center-back seam holds too little",
    fix="girth.fixes.let_out",
    why="Each side of the seam gives its allowance less what must stay beyond the new stitching: 3/8 in at the center "
    "back of trousers, says one tailoring page; another guide keeps 1/2 in.",
    source="SCL",
    when=(
        given(
            "the allowance is known",
            Measure(role="lower_part", slot="allowance", place=MATCH.place, mm=MATCH.allowance),
        ),
        such_that("it holds less than is wanted", past),
    ),
    reckons={"held": held},
    says="The center-back seam holds {held}, both sides together: its allowance is {allowance} and 3/8 in of that must "
    "stay. {amount} is wanted.",
    fires=(
        fires(
            "1 in wanted of 1/2 in allowances",
            offered("too_narrow", "trousers", "lower_part", "girth.fixes.let_out"),
            problem("too_narrow", "trousers", "lower_part", "girth", "1 in"),
            measure("trousers.allowance", "lower_part", "1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.side_strips"),
        near("exactly what it holds", at=1, mm=length("1/4 in")),
        near("wide allowances", at=2, mm=length("1 in")),
        near_without("the allowance is not known", at=2),
    ),
)
