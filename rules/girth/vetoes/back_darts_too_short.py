"""Four darts cannot bear the amount in the length there is."""

from advisor.figures.darts import INTAKE_TO_LENGTH, LONGEST, MOST_INTAKE
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait
from advisor.operations.darts import BEARS, MOST_DARTS


def each(room: Mm, kind: str) -> Mm:
    return min(MOST_INTAKE, min(room, LONGEST) * INTAKE_TO_LENGTH[BEARS.get(kind, "crisp")])


def too_much(room: Mm, kind: str, amount: Mm) -> bool:
    return amount > MOST_DARTS * each(room, kind)


rule = Veto(
    title="More than four darts bear",
    fix="girth.fixes.back_darts",
    why="A dart that takes too much for its length puckers at the point: 1 in at the most, and a fifth of its length "
    "in crisp cotton or polyester, a quarter in most cloth, a third in soft wool. More than four darts make a waist of "
    "points.",
    source="from-memory",
    when=(
        given(
            "the room for a dart is known",
            Measure(role="lower_part", slot="dart_length", place=MATCH.place, mm=MATCH.room),
        ),
        given("and the kind of cloth", Trait(role="cloth", slot="kind", place=MATCH.cloth, word=MATCH.kind)),
        such_that("four darts would take less than the amount", too_much),
    ),
    reckons={"four": lambda room, kind: MOST_DARTS * each(room, kind)},
    says="Four darts {room} long bear {four} in this cloth, all together; {amount} has to go.",
    fires=(
        fires(
            "3 in out, darts 3 in long in cotton",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.back_darts"),
            problem("too_wide", "trousers", "lower_part", "girth", "3 in"),
            measure("trousers.dart_length", "lower_part", "3 in"),
            trait("cloth.kind", "cloth", "cotton"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.side_seams"),
        near("exactly what four of them bear", at=1, mm=length("2 3/8 in")),
        near("room for longer darts", at=2, mm=length("4 in")),
        near("soft wool", at=3, word="wool"),
        near_without("the room is not known", at=2),
        near_without("the cloth is not known", at=3),
    ),
)
