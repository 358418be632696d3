"""Pleats too shallow to be seen as pleats."""

from advisor.figures.edges import QUARTERS
from advisor.figures.exact import inches
from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, offered, problem, trait

LEAST = inches("1/4")


def depth(amount: Mm, spare_at: str) -> Mm:
    return amount / (2 * QUARTERS.get(spare_at, 4))


rule = Veto(
    title="Too shallow for pleats",
    fix="edges.fixes.pleat",
    why=(
        "A fold under 1/4 in deep does not stay folded and reads as a crease. So little is better eased, or taken "
        "in at the side seams."
    ),
    source="common-practice",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        such_that(
            "one in each quarter would be under 1/4 in deep", lambda amount, spare_at: depth(amount, spare_at) < LEAST
        ),
    ),
    reckons={"depth": depth},
    says="One pleat in each quarter would be hardly {depth} deep; under 1/4 in a pleat looks like a crease.",
    fires=(
        fires(
            "1 1/2 in in all",
            offered("wider", "bodice", "upper_part", "edges.fixes.pleat"),
            problem("wider", "bodice", "upper_part", "join", "1 1/2 in"),
            trait("bodice.spare_at", "upper_part", "round"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.ease_in"),
        near("just deep enough", at=1, mm=length("2 in")),
        near("all of it at the back", at=2, word="back"),
        near_without("it is not known where", at=2),
    ),
)
