"""Between ease and gathers it looks like a mistake."""

from advisor.figures.edges import drawn_fullness
from advisor.figures.gathers import EASE_UP_TO, GATHERS_FROM
from advisor.knowledge import MATCH, Measure, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

rule = Veto(
    title="Neither ease nor gathers",
    fix="edges.fixes.gather",
    why=(
        "Between 1.1 and about 1.3 times as full the edge is too full to lie flat and not full enough to look "
        "gathered. Pleats, darts or the side seams take such an amount better."
    ),
    source="common-practice",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        given(
            "the room for gathers is known", Measure(place=MATCH.place, role="upper_part", slot="zone", mm=MATCH.room)
        ),
        such_that(
            "it is more than ease and less than gathers",
            lambda amount, spare_at, room: EASE_UP_TO < drawn_fullness(amount, spare_at, room) < GATHERS_FROM,
        ),
    ),
    reckons={"ratio": lambda amount, spare_at, room: drawn_fullness(amount, spare_at, room)},
    says=(
        "Over 2 in of each quarter the edge would be {ratio} times as full. Gathers begin near 1.3; between 1.1 "
        "and that it looks like a mistake."
    ),
    fires=(
        fires(
            "2 in in all",
            offered("wider", "bodice", "upper_part", "edges.fixes.gather"),
            problem("wider", "bodice", "upper_part", "join", "2 in"),
            trait("bodice.spare_at", "upper_part", "round"),
            measure("bodice.zone", "upper_part", "4 in"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("so little that it is ease", at=1, mm=length("1/2 in")),
        near("enough for gathers", at=1, mm=length("2 1/2 in")),
        near("all of it at the back", at=2, word="back"),
        near("hardly any room", at=3, mm=length("1/2 in")),
        near_without("it is not known where", at=2),
        near_without("the room is not known", at=3),
    ),
)
