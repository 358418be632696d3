"""Too much to ease in from below."""

from advisor.figures.edges import take_up
from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

HALF = inches("1/2")


def most(kind: str, edge: Mm) -> Mm:
    return min(HALF, edge * take_up(kind, most=False))


rule = Veto(
    title="Too much to ease in from below",
    fix="edges.fixes.ease_onto_upper",
    why=(
        "What is eased in from below makes the waist tighter than it was fitted. 1/2 in is given by cloth and "
        "wearer; more must come from the part above. Less than that puckers in cloth that takes nothing up."
    ),
    source="common-practice",
    when=(
        given("the edge is measured", Measure(place=MATCH.place, role="upper_part", slot="edge", mm=MATCH.edge)),
        given("the kind of cloth is known", Trait(role="cloth", slot="kind", word=MATCH.kind)),
        such_that("it is more than can be eased in so", lambda kind, edge, amount: amount > most(kind, edge)),
    ),
    reckons={"most": most},
    says=(
        "{most} is the most that is eased in from below in this cloth: past that the waist is tight or puckers. "
        "{amount} is wanting."
    ),
    fires=(
        fires(
            "3/4 in",
            offered("narrower", "bodice", "upper_part", "edges.fixes.ease_onto_upper"),
            problem("narrower", "bodice", "upper_part", "join", "3/4 in"),
            measure("bodice.edge", "upper_part", "34 in"),
            trait("cloth.kind", "cloth", "cotton"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.wedges"),
        near("just 1/2 in", at=1, mm=length("1/2 in")),
        near_without("the edge is not known", at=2),
        near_without("the cloth is not known", at=3),
    ),
)
