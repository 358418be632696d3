"""Letting out what the seam holds answers part of a waist that is too narrow."""

from advisor.figures.exact import inches
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

KEEP, LEAST = inches("3/8"), inches("1/4")


def short_of_it(allowance: Mm, amount: Mm) -> bool:
    return 2 * (allowance - KEEP) < amount


def worth_it(allowance: Mm, amount: Mm) -> bool:
    return 2 * (allowance - KEEP) >= max(LEAST, amount / 2)


rule = Answer(
    title="Let a narrow waist out as far as the seam allows",
    problem="too_narrow",
    fix="girth.fixes.let_out_part",
    why="The center-back seam holds part of what is wanted. Let it out as far as it goes; what is still tight stays.",
    source="SCL",
    when=(
        given(
            "the allowance is known",
            Measure(role="lower_part", slot="allowance", place=MATCH.place, mm=MATCH.allowance),
        ),
        such_that("it holds less than is wanted", short_of_it),
        such_that("it holds at least 1/4 in, and half of what is wanted", worth_it),
    ),
    fires=(
        fires(
            "2 in wanted of 1 in allowances",
            problem("too_narrow", "trousers", "lower_part", "girth", "2 in"),
            measure("trousers.allowance", "lower_part", "1 in"),
        ),
    ),
    near=(
        near("too wide instead", name="too_wide"),
        near("it holds all of it", at=1, mm=length("1 3/8 in")),
        near("it holds less than half of it", at=1, mm=length("3/4 in")),
        near("it holds next to nothing", at=1, mm=length("7/16 in")),
        near_without("the allowance is not known", at=1),
    ),
)
