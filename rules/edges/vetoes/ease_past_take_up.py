"""More than the cloth takes up."""

from advisor.figures.edges import QUARTERS, take_up
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait


def most(kind: str, edge: Mm, amount: Mm, spare_at: str) -> Mm:
    return max(edge * QUARTERS.get(spare_at, 4) / 4 - amount, Mm(0)) * take_up(kind, most=True)


rule = Veto(
    title="More than the cloth takes up",
    fix="edges.fixes.ease_in",
    why=(
        "Cloth takes up only a share of an edge before it puckers: soft wool 8 to 10 percent, cotton 4 to 5, close "
        "polyester and silk 2 to 3, leather and coated cloth 0 to 1."
    ),
    source="from-memory",
    when=(
        given("the edge is measured", Measure(place=MATCH.place, role="upper_part", slot="edge", mm=MATCH.edge)),
        given("the kind of cloth is known", Trait(role="cloth", slot="kind", word=MATCH.kind)),
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        such_that(
            "it is more than the cloth takes up there",
            lambda kind, edge, amount, spare_at: amount > most(kind, edge, amount, spare_at),
        ),
    ),
    reckons={"most": most, "percent": lambda kind: int(100 * take_up(kind, most=True))},
    says=(
        "At most {percent} percent, {most} of the edge where the spare width lies, eases in without puckers in this "
        "cloth, and {amount} is over."
    ),
    fires=(
        fires(
            "2 in into 34 in of cotton",
            offered("wider", "bodice", "upper_part", "edges.fixes.ease_in"),
            problem("wider", "bodice", "upper_part", "join", "2 in"),
            measure("bodice.edge", "upper_part", "36 in"),
            trait("cloth.kind", "cloth", "cotton"),
            trait("bodice.spare_at", "upper_part", "round"),
        ),
        fires(
            "1 1/2 in into the back half of 36 in of cotton",
            offered("wider", "bodice", "upper_part", "edges.fixes.ease_in"),
            problem("wider", "bodice", "upper_part", "join", "1 1/2 in"),
            measure("bodice.edge", "upper_part", "36 in"),
            trait("cloth.kind", "cloth", "cotton"),
            trait("bodice.spare_at", "upper_part", "back"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("no more than it takes", at=1, mm=length("1 1/2 in")),
        near("a longer edge", at=2, mm=length("42 in")),
        near("soft wool", at=3, word="wool"),
        near_without("the edge is not known", at=2),
        near_without("the cloth is not known", at=3),
        near_without("nobody looked where the spare width lies", at=4),
    ),
)
