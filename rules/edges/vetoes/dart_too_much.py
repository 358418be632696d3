"""More than two darts in a quarter take."""

from advisor.figures.edges import QUARTERS, dart_most
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait


def most(kind: str, room: Mm) -> Mm:
    return 2 * dart_most(kind, room)


def part(amount: Mm, spare_at: str) -> Mm:
    return amount / QUARTERS.get(spare_at, 4)


rule = Veto(
    title="More than two darts take",
    fix="edges.fixes.dart_upper",
    why=(
        "A dart takes no more than its length bears, and never past 1 in: then its point puckers. More than two in "
        "a quarter stand too near each other, which should be 2 in apart."
    ),
    source="common-practice",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        given(
            "the room for a dart is known",
            Measure(place=MATCH.place, role="upper_part", slot="dart_room", mm=MATCH.room),
        ),
        given("the kind of cloth is known", Trait(role="cloth", slot="kind", word=MATCH.kind)),
        such_that(
            "a quarter has more than two darts take",
            lambda amount, spare_at, room, kind: part(amount, spare_at) > most(kind, room),
        ),
    ),
    reckons={"most": most, "part": part},
    says="Two darts {room} long take {most} in this cloth; in each quarter {part} is over.",
    fires=(
        fires(
            "4 in over short darts",
            offered("wider", "bodice", "upper_part", "edges.fixes.dart_upper"),
            problem("wider", "bodice", "upper_part", "join", "4 in"),
            trait("bodice.spare_at", "upper_part", "round"),
            measure("bodice.dart_room", "upper_part", "2 in"),
            trait("cloth.kind", "cloth", "cotton"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("less", at=1, mm=length("3 in")),
        near("longer darts", at=3, mm=length("4 in")),
        near("wool, which bears more", at=4, word="wool"),
        near_without("it is not known where", at=2),
        near_without("the room is not known", at=3),
        near_without("the cloth is not known", at=4),
    ),
)
