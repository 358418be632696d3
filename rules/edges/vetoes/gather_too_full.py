"""Too full for the weight of the cloth."""

from advisor.figures.edges import drawn_fullness, fullest
from advisor.knowledge import MATCH, Measure, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

rule = Veto(
    title="Too full for this weight of cloth",
    fix="edges.fixes.gather",
    why=(
        "The heavier the cloth, the less fullness it takes: 1.5 times is usual for heavy cloth, 2 for medium, 3 for "
        "light. Past that the seam stands off like a ruffle."
    ),
    source="PUNTADAS",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        given(
            "the room for gathers is known", Measure(place=MATCH.place, role="upper_part", slot="zone", mm=MATCH.room)
        ),
        given("the weight of the cloth is known", Trait(role="cloth", slot="weight", word=MATCH.weight)),
        such_that(
            "it is fuller than the cloth takes",
            lambda amount, spare_at, room, weight: drawn_fullness(amount, spare_at, room) > fullest(weight),
        ),
    ),
    reckons={
        "ratio": lambda amount, spare_at, room: drawn_fullness(amount, spare_at, room),
        "ratio_most": lambda weight: fullest(weight),
    },
    says=(
        "In the {room} of a quarter that may be gathered the edge would be {ratio} times as full; "
        "{ratio_most} times is the most for this weight of cloth."
    ),
    fires=(
        fires(
            "10 in in all, in heavy cloth",
            offered("wider", "bodice", "upper_part", "edges.fixes.gather"),
            problem("wider", "bodice", "upper_part", "join", "10 in"),
            trait("bodice.spare_at", "upper_part", "round"),
            measure("bodice.zone", "upper_part", "4 in"),
            trait("cloth.weight", "cloth", "heavy"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("just as full as heavy cloth takes", at=1, mm=length("8 in")),
        near("more room", at=3, mm=length("5 in")),
        near("medium cloth", at=4, word="medium"),
        near_without("it is not known where", at=2),
        near_without("the room is not known", at=3),
        near_without("the weight is not known", at=4),
    ),
)
