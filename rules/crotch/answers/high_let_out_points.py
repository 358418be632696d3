"""Let the inner seams out under a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let the inner seams out under a high crotch",
    problem="crotch_high",
    fix="crotch.fixes.let_out_points",
    why="The inner seams give at the crotch what their allowances hold, and the thighs get the room too.",
    source="TM227-34",
    when=(),
    fires=(
        fires(
            "1/2 in too high",
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("too low instead", name="crotch_low"),),
)
