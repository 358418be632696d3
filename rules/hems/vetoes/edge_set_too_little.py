"""Too little to cut an edge off and set it on again."""

from advisor.figures.exact import inches
from advisor.knowledge import Veto, fires, length, near, offered, problem, such_that

LEAST = inches("7/8")

rule = Veto(
    title="Too little to set the edge on again",
    fix="hems.fixes.edge_set_again",
    why="The seam that sets the old hem on takes 3/8 in of each of its edges; so much must be too long before there "
    "is anything to cut.",
    source="common-practice",
    when=(such_that("it is less than 7/8 in too long", lambda amount: amount < LEAST),),
    says="It is {amount} too long, and the seam that sets the old edge on takes 3/4 in by itself: 7/8 in is the "
    "least. A tuck above it takes less.",
    fires=(
        fires(
            "1/2 in too long",
            offered("too_long", "leg", "leg_end", "hems.fixes.edge_set_again"),
            problem("too_long", "leg", "leg_end", "hem", "1/2 in"),
        ),
    ),
    near=(near("a tuck", fix="hems.fixes.tuck_above_edge"), near("just 7/8 in", at=1, mm=length("7/8 in"))),
)
