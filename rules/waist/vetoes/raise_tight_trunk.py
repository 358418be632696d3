"""Raising a waist would leave the trunk too little room to move."""

from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem


def under_needed(loop: Mm, needed: Mm, amount: Mm) -> bool:
    return loop - 2 * amount < needed


def over_body(loop: Mm, body: Mm, amount: Mm) -> bool:
    return loop - 2 * amount >= body


rule = Veto(
    title="The raise would leave too little room in the trunk",
    fix="waist.fixes.raise_seam",
    why="A waist raised all round takes twice the raise out of the loop from shoulder through the crotch and back. "
    "1 1/2 to 2 in over the body is for standing still; bending and working in woven cloth take 3 to 4 in.",
    source="from-memory",
    when=(
        given("the trunk loop of the garment is known", Measure(role="trunk", slot="loop", mm=MATCH.loop)),
        given("and that of the body", Measure(role="trunk", slot="body", mm=MATCH.body)),
        given("and how long the loop must be", Measure(role="trunk", slot="needed", mm=MATCH.needed)),
        such_that("the raise would take it under that", under_needed),
        such_that("though not under the body itself", over_body),
    ),
    reckons={
        "left": lambda loop, body, amount: loop - 2 * amount - body,
        "room": lambda needed, body: needed - body,
        "lost": lambda amount: 2 * amount,
    },
    says="The trunk would lose {lost} and keep {left} over the body; {room} is needed for what is done in it.",
    fires=(
        fires(
            "1 1/2 in up, 4 in of room",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in"),
            measure("trunk.loop", "trunk", "66 in"),
            measure("trunk.body", "trunk", "62 in"),
            measure("trunk.needed", "trunk", "64 in"),
        ),
    ),
    near=(
        near("another fix", fix="waist.fixes.casing"),
        near("exactly enough is left", at=2, mm=length("67 in")),
        near("it would not even close", at=2, mm=length("64 15/16 in")),
        near_without("no trunk loop in this garment", at=2),
        near_without("the body was not measured", at=3),
        near_without("nobody knows how long it must be", at=4),
    ),
)
