"""Hole too wide to darn."""

from advisor.knowledge import MATCH, Measure, Veto, fires, given, length, measure, near, offered, problem, such_that

rule = Veto(
    title="Hole too wide to darn",
    fix="mending.fixes.darn",
    why="A wide darn is stiff in the middle and drags at its edge; a patch lies flat.",
    source="TM201-70",
    when=(
        given(("the hole was measured"), Measure(place=MATCH.place, role="hardware", slot="hole", mm=MATCH.hole)),
        such_that("it is wider than 1/2 in", lambda hole: hole > length("1/2 in")),
    ),
    says="The holes are {hole} wide: past 1/2 in a darn puckers, and a patch is better.",
    fires=(
        fires(
            "hole too wide to darn",
            offered("holes_open", "snaps", "hardware", "mending.fixes.darn"),
            problem("holes_open", "snaps", "hardware", "mend"),
            measure("snaps.hole", "hardware", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("just 1/2 in", at=2, mm=length("1/2 in")),
        near("it is the button that is so wide", at=2, slot="button"),
    ),
)
