"""Four darts cannot bear the amount in the length there is."""

from advisor.figures.darts import INTAKE_TO_LENGTH, MOST_INTAKE
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait
from advisor.operations.darts import BEARS, MOST_DARTS


def each(room: Mm, kind: str) -> Mm:
    return min(MOST_INTAKE, room / 2 * INTAKE_TO_LENGTH[BEARS.get(kind, "crisp")])


def too_much(room: Mm, kind: str, amount: Mm) -> bool:
    return amount > MOST_DARTS * each(room, kind)


rule = Veto(
    title="More than four darts bear",
    fix="body.fixes.back_darts",
    why=(
        "A dart pointed at both ends bears what one half of it bears: 1 in at the most, and a fifth of that half in "
        "crisp cotton or polyester, a quarter in most cloth, a third in soft wool. Past that its points pucker."
    ),
    source="from-memory",
    when=(
        given(
            "the room for a dart is known",
            Measure(role="body_width", slot="dart_room", place=MATCH.place, mm=MATCH.room),
        ),
        given("and the kind of cloth", Trait(role="cloth", slot="kind", place=MATCH.cloth, word=MATCH.kind)),
        such_that("four darts would take less than the amount", too_much),
    ),
    reckons={"each": each, "four": lambda room, kind: MOST_DARTS * each(room, kind)},
    says=(
        "A dart {room} long, pointed at both ends, bears {each} in this cloth, and four of them {four}; {amount} "
        "has to go."
    ),
    fires=(
        fires(
            "3 in out, darts 6 in long in cotton",
            offered("body_wide", "body", "body_width", "body.fixes.back_darts"),
            problem("body_wide", "body", "body_width", "girth", "3 in"),
            measure("body.dart_room", "body_width", "6 in"),
            trait("cloth.kind", "cloth", "cotton"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_pleat"),
        near("exactly what four of them bear", at=1, mm=length("2 3/8 in")),
        near("room for longer darts", at=2, mm=length("8 in")),
        near("soft wool", at=3, word="wool"),
        near_without("the room is not known", at=2),
        near_without("the cloth is not known", at=3),
    ),
)
