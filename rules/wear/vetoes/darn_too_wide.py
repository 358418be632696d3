"""Hole too wide to darn."""

from advisor.knowledge import (
    MATCH,
    Measure,
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

MOST = length("1 in")

rule = Veto(
    title="Hole too wide to darn by machine",
    fix="wear.fixes.darn",
    why="An army repair manual darns up to 1/2 in and patches what is wider. Over cloth laid behind, rows bridge "
    "about 1 in, by common practice; wider they are a stiff board that drags at its edge.",
    source="TM201-70",
    when=(
        given("the hole was measured", Measure(role="worn_place", slot="hole", place=MATCH.place, mm=MATCH.hole)),
        such_that("it is wider than 1 in", lambda hole: hole > MOST),
    ),
    says="The hole at {place} is {hole} wide: past 1 in a darn is a stiff board, and a patch lies flat.",
    fires=(
        fires(
            "2 in wide",
            offered("worn_through", "worn", "worn_place", "wear.fixes.darn"),
            problem("worn_through", "worn", "worn_place", "mend"),
            measure("worn.hole", "worn_place", "2 in"),
        ),
    ),
    near=(
        near("another fix", fix="wear.fixes.patch_under"),
        near("just 1 in", at=2, mm=length("1 in")),
        near_without("the hole was not measured", at=2),
    ),
)
