"""Lower the curve of a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lower the curve of a high crotch",
    problem="crotch_high",
    fix="crotch.fixes.lower_curve",
    why="A lower curve gives the least amount with the least work; nothing else is opened.",
    source="MAPLE",
    when=(),
    fires=(
        fires(
            "1/2 in too high",
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("too low instead", name="crotch_low"),),
)
