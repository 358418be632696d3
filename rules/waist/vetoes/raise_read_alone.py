"""Alone, a trunk loop is not read well enough for a raise that nearly uses up its room."""

from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

ERROR = length("1 in")


def holds(loop: Mm, needed: Mm, amount: Mm) -> bool:
    return loop - 2 * amount >= needed


def within_error(loop: Mm, needed: Mm, amount: Mm) -> bool:
    return loop - 2 * amount < needed + ERROR


rule = Veto(
    title="The room left is less than one errs alone",
    fix="waist.fixes.raise_seam",
    why="Alone before a mirror a trunk loop is read no better than to 1 in. A cut that leaves less than that to spare "
    "rests on a number nobody has.",
    source="from-memory",
    when=(
        given("nobody helps to measure", Trait(role="bench", slot="help", word="no", place=MATCH.bench)),
        given("the trunk loop of the garment is known", Measure(role="trunk", slot="loop", mm=MATCH.loop)),
        given("and how long it must be", Measure(role="trunk", slot="needed", mm=MATCH.needed)),
        such_that("as measured, the raise leaves it long enough", holds),
        such_that("but by less than 1 in", within_error),
    ),
    reckons={"spare": lambda loop, needed, amount: loop - 2 * amount - needed},
    says="As you measured it, the raise leaves {spare} beyond the room the trunk needs, and alone it is read no better "
    "than to 1 in. Have somebody measure it, or choose what cuts nothing.",
    fires=(
        fires(
            "1 1/2 in up, 1/2 in to spare",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in"),
            trait("bench.help", "bench", "no"),
            measure("trunk.loop", "trunk", "67 1/2 in"),
            measure("trunk.needed", "trunk", "64 in"),
        ),
    ),
    near=(
        near("another fix", fix="waist.fixes.casing"),
        near("there is help", at=2, word="yes"),
        near("exactly 1 in to spare", at=3, mm=length("68 in")),
        near("too short as measured: another ruling says so", at=3, mm=length("66 in")),
        near_without("no trunk loop in this garment", at=3),
        near_without("nobody knows how long it must be", at=4),
    ),
)
