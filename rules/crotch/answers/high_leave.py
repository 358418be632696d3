"""Leave a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a high crotch",
    problem="crotch_high",
    fix="general.fixes.leave",
    why="Worn a little lower it may pass. More than about 1/2 in short, trousers are better left on the rack, or "
    "passed on to someone they fit: it is not worth a cut.",
    source="from-memory",
    when=(),
    fires=(
        fires(
            "1/2 in too high",
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("too low instead", name="crotch_low"),),
)
