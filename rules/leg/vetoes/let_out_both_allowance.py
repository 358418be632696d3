"""Both leg seams together hold too little."""

from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem

KEEP = inches("3/8")


def held(inner: Mm, outer: Mm) -> Mm:
    """Half goes to each seam, so that the one that holds less decides."""
    return max(4 * (min(inner, outer) - KEEP), Mm(0))


rule = Veto(
    title="Both leg seams hold too little",
    fix="leg.fixes.let_out_both",
    why="Each seam gives half, and twice what its allowance has beyond the 3/8 in that must stay: the one that holds "
    "less decides for both.",
    source="common-practice",
    when=(
        given(
            "the allowance inside is known",
            Measure(role="legs", slot="inseam_allowance", place=MATCH.legs, mm=MATCH.inner),
        ),
        given("and the one outside", Measure(role="legs", slot="outseam_allowance", place=MATCH.legs, mm=MATCH.outer)),
        such_that("they hold less than is wanted", lambda inner, outer, amount: amount > held(inner, outer)),
    ),
    reckons={"held": held},
    says="Shared between both seams, allowances of {inner} inside and {outer} outside give {held}, of which 3/8 in "
    "must stay at each; {amount} is wanted.",
    fires=(
        fires(
            "1 in wanted",
            offered("leg_narrow", "thigh", "leg_girth", "leg.fixes.let_out_both"),
            problem("leg_narrow", "thigh", "leg_girth", "girth", "1 in"),
            measure("legs.inseam_allowance", "legs", "1/2 in"),
            measure("legs.outseam_allowance", "legs", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", fix="leg.fixes.strips"),
        near("exactly what they hold", at=1, mm=length("1/2 in")),
        near("more inside", at=2, mm=length("5/8 in")),
        near_without("nothing known of the inside", at=2),
        near_without("nothing known of the outside", at=3),
    ),
)
