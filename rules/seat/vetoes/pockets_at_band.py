"""Shortening the back would bring the pockets up to the band."""

from advisor.knowledge import (
    MATCH,
    Measure,
    Mm,
    Trait,
    Veto,
    fires,
    given,
    length,
    measure,
    near,
    near_without,
    offered,
    problem,
    such_that,
    trait,
)

FLOOR = length("1 in")


def left(below: Mm, amount: Mm) -> Mm:
    return max(below - amount, Mm(0))


rule = Veto(
    title="The back pockets would touch the band",
    fix="seat.fixes.shorten_back",
    why="What goes off the top of the back brings the pockets nearer the band; a hand no longer gets in under a "
    "belt, and the two seams bulk on each other.",
    source="common-practice",
    when=(
        given("there are back pockets", Trait(role="back_pockets", slot="there", word="there", place=MATCH.other)),
        given(
            "their depth below the waist is known",
            Measure(role="back_pockets", slot="below", place=MATCH.other, mm=MATCH.below),
        ),
        such_that("less than 1 in would be left above them", lambda below, amount: left(below, amount) < FLOOR),
    ),
    reckons={"left": left},
    says="{other} sit {below} below the waist and would sit {left}; 1 in is the least.",
    fires=(
        fires(
            "1 in off, above pockets 1 1/2 in down",
            offered("seat_long", "seat", "seat", "seat.fixes.shorten_back"),
            problem("seat_long", "seat", "seat", "level", "1 in"),
            trait("back_pocket.there", "back_pockets", "there"),
            measure("back_pocket.below", "back_pockets", "1 1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("no back pockets", at=2, word="none"),
        near("exactly 1 in is left", at=3, mm=length("2 in")),
        near_without("their depth is not known", at=3),
    ),
)
