"""Raising a waist would make the trunk shorter than the body."""

from advisor.knowledge import (
    MATCH,
    Measure,
    Mm,
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
)


def under_body(loop: Mm, body: Mm, amount: Mm) -> bool:
    return loop - 2 * amount < body


rule = Veto(
    title="The raise would make the trunk shorter than the body",
    fix="waist.fixes.raise_seam",
    why="A waist raised all round takes twice the raise out of the loop from shoulder through the crotch and back. A "
    "loop shorter than the body cannot be closed even standing.",
    source="common-practice",
    when=(
        given("the trunk loop of the garment is known", Measure(role="trunk", slot="loop", mm=MATCH.loop)),
        given("and that of the body", Measure(role="trunk", slot="body", mm=MATCH.body)),
        such_that("the raise would take the one under the other", under_body),
    ),
    reckons={
        "short": lambda loop, body, amount: body - (loop - 2 * amount),
        "lost": lambda amount: 2 * amount,
    },
    says="The trunk would lose {lost} and end {short} shorter than the body: it could not be closed, let alone sat in.",
    fires=(
        fires(
            "2 in up, 3 in of room",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "2 in"),
            measure("trunk.loop", "trunk", "65 in"),
            measure("trunk.body", "trunk", "62 in"),
        ),
    ),
    near=(
        near("another fix", fix="waist.fixes.casing"),
        near("exactly as long as the body", at=2, mm=length("66 in")),
        near_without("no trunk loop in this garment", at=2),
        near_without("the body was not measured", at=3),
    ),
)
