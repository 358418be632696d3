"""Too little to cut a lining for."""

from advisor.knowledge import Veto, fires, length, near, offered, problem, such_that

LEAST = length("1/2 in")

rule = Veto(
    title="Too little to cut for",
    fix="lining.fixes.hem_again",
    why="The new narrow hem takes 1/2 in; where less than that is over, the old hem would have to come down first. A "
    "tuck does it.",
    source="OSU-L87",
    when=(such_that("it is less than 1/2 in too long", lambda amount: amount < LEAST),),
    says="The lining is {amount} too long, and its new hem takes 1/2 in: a tuck takes less.",
    fires=(
        fires(
            "3/8 in too long",
            offered("lining_long", "lining", "lining", "lining.fixes.hem_again"),
            problem("lining_long", "lining", "lining", "finish", "3/8 in"),
        ),
    ),
    near=(near("a tuck", fix="lining.fixes.tuck"), near("just 1/2 in", at=1, mm=length("1/2 in"))),
)
