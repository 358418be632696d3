"""Raising the seam part of the way answers a low waist where the trunk cannot spare the whole."""

from advisor.knowledge import (
    MATCH,
    Answer,
    Measure,
    Mm,
    fires,
    given,
    length,
    measure,
    near,
    near_without,
    problem,
    such_that,
)

LEAST = length("1/4 in")


def short_of_it(loop: Mm, needed: Mm, amount: Mm) -> bool:
    return loop - needed < 2 * amount


def worth_a_cut(loop: Mm, needed: Mm) -> bool:
    return loop - needed >= 2 * LEAST


rule = Answer(
    title="Raise a low waist as far as the trunk allows",
    problem="waist_low",
    fix="waist.fixes.raise_part",
    why="The trunk loop cannot spare the whole raise, for a waist goes up in front and behind; what it can spare is "
    "taken, and the rest stays as a little blousing.",
    source="common-practice",
    when=(
        given("the trunk loop of the garment is known", Measure(role="trunk", slot="loop", mm=MATCH.loop)),
        given("and how long it must be", Measure(role="trunk", slot="needed", mm=MATCH.needed)),
        such_that("it cannot spare the whole raise", short_of_it),
        such_that("it can spare at least 1/4 in", worth_a_cut),
    ),
    fires=(
        fires(
            "1 1/2 in low, 2 in to spare",
            problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in"),
            measure("trunk.loop", "trunk", "66 in"),
            measure("trunk.needed", "trunk", "64 in"),
        ),
    ),
    near=(
        near("it sits high", name="waist_high"),
        near("exactly enough to spare for the whole", at=1, mm=length("67 in")),
        near("next to nothing to spare", at=1, mm=length("64 7/16 in")),
        near_without("no trunk loop in this garment", at=1),
        near_without("nobody knows how long it must be", at=2),
    ),
)
